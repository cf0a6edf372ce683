package org.groundline.bank.numeric.draw;

import org.groundline.bank.numeric.formula.Expression;
import org.groundline.bank.numeric.formula.Formula;
import org.groundline.bank.numeric.formula.NoAnswer;
import org.groundline.measure.Rounding;
import org.groundline.measure.Unit;

import java.math.BigDecimal;
import java.util.List;

/// One drawn quantity: chosen by chance, or computed from others.
public sealed interface Draw {
    int GIVEN_DIGITS = 6;

    String name();

    Unit unit();

    /// How many values it may take while all others stay as they are.
    int count();

    /// The value as an item prints it, from its place among those it may take and from its SI.
    String printed(int place, double si);

    /// A value (SI) that need not be among those of this draw, as it would be printed.
    default String printed(double si) {
        return unit().print(Rounding.significant(unit().fromSi(si), GIVEN_DIGITS));
    }

    /// Chosen from a list of values, all in one unit.
    record Chosen(String name, Unit unit, List<Value> values) implements Draw {
        static Chosen of(String name, Unit unit, List<BigDecimal> decimals) {
            return new Chosen(name, unit, decimals.stream().map(d -> Value.of(d, unit)).toList());
        }

        @Override
        public int count() {
            return values.size();
        }

        @Override
        public String printed(int place, double si) {
            return values.get(place).printed();
        }
    }

    /// A value as printed and as computed with.
    record Value(String printed, double si) {
        static Value of(BigDecimal decimal, Unit unit) {
            return new Value(unit.print(decimal), unit.toSi(decimal.doubleValue()));
        }
    }

    /// Computed from other drawn values, then rounded. It is the rounded value that is printed and
    /// used, so that a question can be worked out from what it tells.
    ///
    /// @param slot its place among the drawn values
    record Dependent(int slot, String name, Unit unit, Expression formula, Rounding rounding)
            implements Draw {
        @Override
        public int count() {
            return 1;
        }

        /// @throws NoAnswer if the formula has no finite value for them
        double value(double[] drawn) {
            double exact = Formula.compute("draw.%s.formula", name, formula, drawn);
            return unit.toSi(rounded(exact).doubleValue());
        }

        /// To round once more changes nothing, so that the printed value needs no place of its own.
        @Override
        public String printed(int place, double si) {
            return unit.print(rounded(si));
        }

        private BigDecimal rounded(double si) {
            return rounding.round(unit.fromSi(si));
        }
    }
}
