package org.groundline.bank.numeric;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Pattern;

/// Decimals as authors write them and as worked solutions show them.
final class Decimals {
    private static final Pattern WRITTEN = Pattern.compile("-?\\d{1,12}(\\.\\d{1,12})?");

    private Decimals() {}

    /// A plain decimal number: no exponent, no unit, no groups.
    static Optional<BigDecimal> find(String text) {
        String stripped = text.strip();
        return WRITTEN.matcher(stripped).matches()
                ? Optional.of(new BigDecimal(stripped))
                : Optional.empty();
    }

    /// The value to so many significant digits, without zeros at its end.
    static BigDecimal shortened(double value, int digits) {
        var rounded =
                new BigDecimal(value)
                        .round(new MathContext(digits, RoundingMode.HALF_UP))
                        .stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
