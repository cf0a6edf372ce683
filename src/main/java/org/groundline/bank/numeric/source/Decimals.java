package org.groundline.bank.numeric.source;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/// Decimals as authors write them.
public final class Decimals {
    private static final Pattern WRITTEN = Pattern.compile("-?\\d{1,12}(\\.\\d{1,12})?");

    private Decimals() {}

    /// A plain decimal number: no exponent, no unit, no groups.
    public static Optional<BigDecimal> find(String text) {
        String stripped = text.strip();
        return WRITTEN.matcher(stripped).matches()
                ? Optional.of(new BigDecimal(stripped))
                : Optional.empty();
    }
}
