package org.groundline.bank.numeric;

import org.groundline.measure.Rounding;

import java.math.BigDecimal;

/// All values from `lowest` to `highest`, both included.
record Interval(BigDecimal lowest, BigDecimal highest) {
    static Interval of(double lowest, double highest) {
        return new Interval(Rounding.trusted(lowest), Rounding.trusted(highest));
    }

    /// This interval, grown to hold the value.
    Interval with(BigDecimal value) {
        return new Interval(lowest.min(value), highest.max(value));
    }
}
