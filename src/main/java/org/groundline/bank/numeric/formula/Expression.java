package org.groundline.bank.numeric.formula;

import org.groundline.measure.Dimension;

import java.util.List;
import java.util.stream.Stream;

/// A formula as a tree: what it computes, in SI, and of which dimension that is.
///
/// Each node checks the dimensions of its parts when it is made. `toString` is the sub-expression
/// as an author would write it, for messages.
public sealed interface Expression {
    Dimension dimension();

    /// Computes the value; `values` holds those of the names, by their places in the scope.
    double value(double[] values);

    /// The expressions that it is made of.
    List<Expression> parts();

    /// The names that occur in it; one may come twice.
    default Stream<String> names() {
        return parts().stream().flatMap(Expression::names);
    }

    /// Whether no name occurs in it.
    default boolean isConstant() {
        return names().findAny().isEmpty();
    }

    record Number(double si, Dimension dimension, String text) implements Expression {
        @Override
        public double value(double[] values) {
            return si;
        }

        @Override
        public List<Expression> parts() {
            return List.of();
        }

        @Override
        public String toString() {
            return text;
        }
    }

    record Name(int slot, Dimension dimension, String text) implements Expression {
        @Override
        public double value(double[] values) {
            return values[slot];
        }

        @Override
        public List<Expression> parts() {
            return List.of();
        }

        @Override
        public Stream<String> names() {
            return Stream.of(text);
        }

        @Override
        public String toString() {
            return text;
        }
    }

    record Negation(Expression of) implements Expression {
        @Override
        public Dimension dimension() {
            return of.dimension();
        }

        @Override
        public double value(double[] values) {
            return -of.value(values);
        }

        @Override
        public List<Expression> parts() {
            return List.of(of);
        }

        @Override
        public String toString() {
            return "-" + wrapped(of);
        }
    }

    record Sum(Expression left, Expression right) implements Expression {
        public Sum {
            DimensionRules.requireSame("adds", left, "and", right, left + " + " + right);
        }

        @Override
        public Dimension dimension() {
            return left.dimension();
        }

        @Override
        public double value(double[] values) {
            return left.value(values) + right.value(values);
        }

        @Override
        public List<Expression> parts() {
            return List.of(left, right);
        }

        @Override
        public String toString() {
            return left + " + " + right;
        }
    }

    record Difference(Expression left, Expression right) implements Expression {
        public Difference {
            DimensionRules.requireSame("takes", right, "from", left, left + " - " + wrapped(right));
        }

        @Override
        public Dimension dimension() {
            return left.dimension();
        }

        @Override
        public double value(double[] values) {
            return left.value(values) - right.value(values);
        }

        @Override
        public List<Expression> parts() {
            return List.of(left, right);
        }

        @Override
        public String toString() {
            return left + " - " + wrapped(right);
        }
    }

    record Product(Expression left, Expression right, Dimension dimension) implements Expression {
        Product(Expression left, Expression right) {
            this(left, right, left.dimension().times(right.dimension()));
        }

        @Override
        public double value(double[] values) {
            return left.value(values) * right.value(values);
        }

        @Override
        public List<Expression> parts() {
            return List.of(left, right);
        }

        @Override
        public String toString() {
            return wrapped(left) + " * " + wrapped(right);
        }
    }

    record Quotient(Expression left, Expression right, Dimension dimension) implements Expression {
        Quotient(Expression left, Expression right) {
            this(left, right, left.dimension().over(right.dimension()));
        }

        @Override
        public double value(double[] values) {
            return left.value(values) / right.value(values);
        }

        @Override
        public List<Expression> parts() {
            return List.of(left, right);
        }

        @Override
        public String toString() {
            return wrapped(left) + " / " + wrapped(right);
        }
    }

    record Power(Expression base, Expression exponent, Dimension dimension) implements Expression {
        Power(Expression base, Expression exponent) {
            this(base, exponent, DimensionRules.power(base, exponent));
        }

        @Override
        public double value(double[] values) {
            return StrictMath.pow(base.value(values), exponent.value(values));
        }

        @Override
        public List<Expression> parts() {
            return List.of(base, exponent);
        }

        @Override
        public String toString() {
            return wrapped(base) + " ^ " + wrapped(exponent);
        }
    }

    record Call(Function function, List<Expression> arguments, Dimension dimension)
            implements Expression {
        public Call {
            arguments = List.copyOf(arguments);
        }

        Call(Function function, List<Expression> arguments) {
            this(function, arguments, function.dimensionFor(arguments));
        }

        @Override
        public double value(double[] values) {
            double[] computed = new double[arguments.size()];
            for (int i = 0; i < computed.length; i++) {
                computed[i] = arguments.get(i).value(values);
            }
            return function.body().compute(computed);
        }

        @Override
        public List<Expression> parts() {
            return arguments;
        }

        @Override
        public String toString() {
            return function.callOf(arguments);
        }
    }

    private static String wrapped(Expression part) {
        return part instanceof Number || part instanceof Name || part instanceof Call
                ? part.toString()
                : "(" + part + ")";
    }
}
