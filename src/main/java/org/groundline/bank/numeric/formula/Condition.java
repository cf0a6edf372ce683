package org.groundline.bank.numeric.formula;

import java.util.stream.Stream;

/// What must hold for drawn values, as a tree over expressions.
public sealed interface Condition {
    boolean holds(double[] values);

    /// The names that occur in it; one may come twice.
    Stream<String> names();

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

        @Override
        public Stream<String> names() {
            return Stream.concat(left.names(), right.names());
        }
    }

    record Both(Condition left, Condition right) implements Condition {
        @Override
        public boolean holds(double[] values) {
            return left.holds(values) && right.holds(values);
        }

        @Override
        public Stream<String> names() {
            return Stream.concat(left.names(), right.names());
        }
    }

    record Either(Condition left, Condition right) implements Condition {
        @Override
        public boolean holds(double[] values) {
            return left.holds(values) || right.holds(values);
        }

        @Override
        public Stream<String> names() {
            return Stream.concat(left.names(), right.names());
        }
    }
}
