package org.groundline.web.request;

import org.groundline.error.Refusal;

import java.math.BigDecimal;
import java.math.RoundingMode;

/// Percentages as people and programs read them: cut off, never rounded up. Marks gained have as
/// many decimals as the pass mark beside them (none, one or two), so that a fail never reads as the
/// pass mark and a pass never reads below it.
public final class Percent {
    private static final String SIGN = "\u202f%";
    private static final int DECIMALS = 2;

    private Percent() {}

    /// A share of cases in whole percent, such as `63 %`; none of none is `0 %`.
    public static String whole(long part, long all) {
        return (all == 0 ? "0" : cut(part, all, 0).toPlainString()) + SIGN;
    }

    /// A share from 0 to 1 in whole percent.
    public static String whole(double share) {
        return cut(share, 0).toPlainString() + SIGN;
    }

    /// A pass mark with as many decimals as it needs, such as `75 %` or `72.5 %`.
    ///
    /// @param mark in hundredths of a percent
    public static String mark(int mark) {
        return markText(mark) + SIGN;
    }

    /// Marks gained beside their pass mark, such as `73 %` beside `75 %`, `75.40 %` beside `75.33
    /// %`.
    ///
    /// @param hundredths marks gained, in hundredths of a mark
    /// @param possible marks to be had, in hundredths, above zero
    /// @param mark in hundredths of a percent
    public static String gained(int hundredths, int possible, int mark) {
        return gainedText(hundredths, possible, mark) + SIGN;
    }

    /// As [#mark], as a decimal for programs.
    public static String markText(int mark) {
        return shortened(BigDecimal.valueOf(mark, DECIMALS));
    }

    /// As [#gained], as a decimal for programs.
    public static String gainedText(int hundredths, int possible, int mark) {
        return cut(hundredths, possible, decimalsOf(mark)).toPlainString();
    }

    /// A share of cases as a decimal for programs, with two decimals at most.
    public static String shareText(long part, long all) {
        return shortened(cut(part, all, DECIMALS));
    }

    /// A share from 0 to 1 as a decimal for programs, with two decimals at most.
    public static String shareText(double share) {
        return shortened(cut(share, DECIMALS));
    }

    /// Reads a percentage into hundredths of a percent.
    ///
    /// @throws Refusal.Invalid if the text is none
    public static int read(String field, String text) {
        if (!text.matches("\\d{1,3}(\\.\\d{1,2})?")) {
            throw new Refusal.Invalid(
                    field, "Write a percentage with at most two decimals, such as 75 or 72.5.");
        }
        return new BigDecimal(text).movePointRight(DECIMALS).intValueExact();
    }

    private static int decimalsOf(int mark) {
        return mark % 100 == 0 ? 0 : mark % 10 == 0 ? 1 : DECIMALS;
    }

    private static BigDecimal cut(long part, long all, int decimals) {
        return BigDecimal.valueOf(part)
                .movePointRight(2)
                .divide(BigDecimal.valueOf(all), decimals, RoundingMode.FLOOR);
    }

    /// Cuts the decimal that the share prints as: as a binary number 0.29 lies below 29 percent.
    private static BigDecimal cut(double share, int decimals) {
        return BigDecimal.valueOf(share).movePointRight(2).setScale(decimals, RoundingMode.FLOOR);
    }

    private static String shortened(BigDecimal percent) {
        BigDecimal bare = percent.stripTrailingZeros();
        return bare.setScale(Math.max(0, bare.scale())).toPlainString();
    }
}
