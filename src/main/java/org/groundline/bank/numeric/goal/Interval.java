package org.groundline.bank.numeric.goal;

import org.groundline.measure.Rounding;

import java.math.BigDecimal;

/// All values from `lowest` to `highest`, both included.
public record Interval(BigDecimal lowest, BigDecimal highest) {
    /// The bounds as decimals, without the noise of binary fractions.
    public static Interval of(double lowest, double highest) {
        return new Interval(Rounding.trusted(lowest), Rounding.trusted(highest));
    }

    /// This interval, grown to hold the value.
    public Interval with(BigDecimal value) {
        return new Interval(lowest.min(value), highest.max(value));
    }
}
