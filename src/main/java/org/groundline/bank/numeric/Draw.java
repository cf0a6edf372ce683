package org.groundline.bank.numeric;

import org.groundline.measure.Rounding;
import org.groundline.measure.Unit;

import java.math.BigDecimal;
import java.util.List;

/// One drawn quantity and the values it may take, all in one unit.
record Draw(String name, Unit unit, List<Value> values) {
    private static final int GIVEN_DIGITS = 6;

    /// A value as printed and as computed with.
    record Value(String printed, double si) {
        static Value of(BigDecimal decimal, Unit unit) {
            return new Value(unit.print(decimal), unit.toSi(decimal.doubleValue()));
        }
    }

    /// A value (SI) that need not be among those of this draw, as it would be printed.
    String printed(double si) {
        return unit.print(Rounding.significant(unit.fromSi(si), GIVEN_DIGITS));
    }

    static Draw of(String name, Unit unit, List<BigDecimal> decimals) {
        return new Draw(name, unit, decimals.stream().map(d -> Value.of(d, unit)).toList());
    }
}
