package org.groundline.bank.numeric.formula;

/// What must hold for drawn values, as a tree over expressions.
public sealed interface Condition {
    boolean holds(double[] values);

    /// The ways to compare two quantities of the same dimension. Equality is not among them: values
    /// that were computed are hardly ever exactly equal.
    enum Sign {
        BELOW("<"),
        AT_MOST("<="),
        ABOVE(">"),
        AT_LEAST(">=");

        private final String symbol;

        Sign(String symbol) {
            this.symbol = symbol;
        }
    }

    record Comparison(Expression left, Sign sign, Expression right) implements Condition {
        public Comparison {
            DimensionRules.requireSame(
                    "compares", left, "with", right, left + " " + sign.symbol + " " + right);
        }

        @Override
        public boolean holds(double[] values) {
            double first = left.value(values);
            double second = right.value(values);
            return switch (sign) {
                case BELOW -> first < second;
                case AT_MOST -> first <= second;
                case ABOVE -> first > second;
                case AT_LEAST -> first >= second;
            };
        }
    }

    record Both(Condition left, Condition right) implements Condition {
        @Override
        public boolean holds(double[] values) {
            return left.holds(values) && right.holds(values);
        }
    }

    record Either(Condition left, Condition right) implements Condition {
        @Override
        public boolean holds(double[] values) {
            return left.holds(values) || right.holds(values);
        }
    }
}
