package org.groundline.web.request;

/// Percentages for people. Cut off, never rounded up: a fail never reads 75 %.
public final class Percent {
    private Percent() {}

    /// A share of marks in whole percent, such as `63 %`.
    public static String whole(long part, long all) {
        return (all == 0 ? 0 : 100 * part / all) + "\u202f%";
    }

    /// A share from 0 to 1 in whole percent.
    public static String whole(double share) {
        return (int) Math.floor(100 * share) + "\u202f%";
    }

    /// Hundredths of a percent with as many decimals as they need, such as `75 %` or `72.5 %`.
    public static String mark(int hundredths) {
        return java.math.BigDecimal.valueOf(hundredths, 2).stripTrailingZeros().toPlainString()
                + "\u202f%";
    }
}
