package org.groundline.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/// Rounding to a multiple of a step, with a side: what decides safety is rounded to the safe one.
///
/// @param step above zero, in the unit of what is rounded
public record Rounding(BigDecimal step, Side side) {
    /// DOWN is towards smaller, UP towards larger values, whatever the sign; NEAREST takes a value
    /// in the middle away from zero.
    public enum Side {
        DOWN(RoundingMode.FLOOR),
        UP(RoundingMode.CEILING),
        NEAREST(RoundingMode.HALF_UP);

        private final RoundingMode mode;

        Side(RoundingMode mode) {
            this.mode = mode;
        }
    }

    /// A double carries 15 to 17 digits; the last few are noise of the arithmetic and must not push
    /// 3000 up to 3010.
    private static final int TRUSTED_DIGITS = 12;

    private static final double[] POWERS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16
    };

    public Rounding {
        if (step.signum() <= 0) {
            throw new IllegalArgumentException("step of rounding is not above zero: " + step);
        }
    }

    /// The value with as many decimals as the step has.
    public BigDecimal round(double value) {
        return round(trusted(value));
    }

    public BigDecimal round(BigDecimal value) {
        return value.divide(step, 0, side.mode).multiply(step);
    }

    /// The decimal that a computed value stands for: its first twelve digits.
    public static BigDecimal trusted(double value) {
        return significant(value, TRUSTED_DIGITS);
    }

    /// The value to so many significant digits, without zeros at the end of its decimals.
    /// Calculated in long numbers where that is possible, as items are posed with a dozen of these.
    public static BigDecimal significant(double value, int digits) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("no decimal stands for " + value);
        }
        int decimals = digits - integerDigits(Math.abs(value));
        if (digits > TRUSTED_DIGITS || decimals < 0 || decimals >= POWERS.length) {
            var rounded =
                    new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_UP));
            return stripped(rounded);
        }
        return stripped(BigDecimal.valueOf(Math.round(value * POWERS[decimals]), decimals));
    }

    /// How many digits stand before the decimal point; 0 for 0.5, −1 for 0.05.
    private static int integerDigits(double size) {
        int digits = 0;
        while (digits < POWERS.length && size >= POWERS[digits]) {
            digits++;
        }
        while (digits <= 0 && 1 - digits < POWERS.length && size * POWERS[1 - digits] < 1) {
            digits--;
        }
        return digits;
    }

    private static BigDecimal stripped(BigDecimal decimal) {
        var stripped = decimal.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
