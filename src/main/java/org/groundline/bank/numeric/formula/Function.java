package org.groundline.bank.numeric.formula;

import static java.util.stream.Collectors.joining;

import org.groundline.measure.Dimension;

import java.util.List;

/// A function that formulas may call.
///
/// @param parameters what it takes, for messages and documents, such as "altitude"
/// @param rule the result's dimension for arguments of the right number, or a fault
public record Function(String name, List<String> parameters, Rule rule, Body body) {
    public Function {
        parameters = List.copyOf(parameters);
    }

    /// Decides on the dimension of a call.
    public interface Rule {
        Dimension dimension(Function function, List<Expression> arguments);
    }

    /// Computes in SI.
    public interface Body {
        double compute(double[] arguments);
    }

    Dimension dimensionFor(List<Expression> arguments) {
        if (arguments.size() != parameters.size()) {
            throw new FormulaFault(
                    "`%s` gives %d values".formatted(callOf(arguments), arguments.size()),
                    "write " + this);
        }
        return rule.dimension(this, arguments);
    }

    String callOf(List<Expression> arguments) {
        return name + arguments.stream().map(Expression::toString).collect(joining(", ", "(", ")"));
    }

    @Override
    public String toString() {
        return name + "(" + String.join(", ", parameters) + ")";
    }

    /// Each parameter has its own fixed dimension, and so has the result.
    static Rule fixed(Dimension result, Dimension... parameters) {
        return (function, arguments) -> {
            for (int i = 0; i < parameters.length; i++) {
                require(parameters[i], function, i, arguments);
            }
            return result;
        };
    }

    private static void require(
            Dimension wanted, Function function, int at, List<Expression> arguments) {
        var given = arguments.get(at);
        if (!given.dimension().equals(wanted)) {
            throw new FormulaFault(
                    "in `%s` the %s `%s` is %s, not %s"
                            .formatted(
                                    function.callOf(arguments),
                                    function.parameters().get(at),
                                    given,
                                    given.dimension(),
                                    wanted),
                    "write " + function);
        }
    }
}
