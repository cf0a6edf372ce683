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
    private static final MathContext TRUSTED = new MathContext(12, RoundingMode.HALF_EVEN);

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
        var decimal = new BigDecimal(value, TRUSTED).stripTrailingZeros();
        return decimal.scale() < 0 ? decimal.setScale(0) : decimal;
    }
}
