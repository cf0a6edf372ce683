package org.groundline.bank.numeric.formula;

import static org.groundline.measure.Dimension.ANGLE;
import static org.groundline.measure.Dimension.NUMBER;

import static java.util.function.Function.identity;
import static java.util.stream.Collectors.toUnmodifiableMap;

import org.groundline.bank.numeric.formula.Function.Body;
import org.groundline.bank.numeric.formula.Function.Rule;
import org.groundline.formulary.Formulary;
import org.groundline.formulary.Input;
import org.groundline.formulary.Quantity;
import org.groundline.measure.Dimension;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/// All functions that formulas may call: the usual ones, and those of the theory package.
final class Functions {
    private static final Map<String, Function> BY_NAME =
            Stream.of(general(), circular(), theory())
                    .flatMap(List::stream)
                    .collect(toUnmodifiableMap(Function::name, identity()));

    private Functions() {}

    static Optional<Function> find(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }

    static List<String> names() {
        return BY_NAME.keySet().stream().sorted().toList();
    }

    private static List<Function> general() {
        Rule root = (f, a) -> a.getFirst().dimension().root(2);
        Rule same = (f, a) -> a.getFirst().dimension();
        Rule bothSame = Functions::bothSame;
        return List.of(
                function("sqrt", root, a -> Math.sqrt(a[0]), "value"),
                function("abs", same, a -> Math.abs(a[0]), "value"),
                function("min", bothSame, a -> Math.min(a[0], a[1]), "one", "other"),
                function("max", bothSame, a -> Math.max(a[0], a[1]), "one", "other"),
                function("ln", Function.fixed(NUMBER, NUMBER), a -> StrictMath.log(a[0]), "value"),
                function(
                        "exp", Function.fixed(NUMBER, NUMBER), a -> StrictMath.exp(a[0]), "value"));
    }

    private static List<Function> circular() {
        Rule ofAngle = Function.fixed(NUMBER, ANGLE);
        Rule toAngle = Function.fixed(ANGLE, NUMBER);
        return List.of(
                function("sin", ofAngle, a -> StrictMath.sin(a[0]), "angle"),
                function("cos", ofAngle, a -> StrictMath.cos(a[0]), "angle"),
                function("tan", ofAngle, a -> StrictMath.tan(a[0]), "angle"),
                function("asin", toAngle, a -> StrictMath.asin(a[0]), "value"),
                function("atan", toAngle, a -> StrictMath.atan(a[0]), "value"));
    }

    /// Each quantity of the formulary, as a function of its inputs.
    private static List<Function> theory() {
        return Formulary.list().stream().map(Functions::of).toList();
    }

    private static Function of(Quantity quantity) {
        Dimension[] inputs =
                quantity.inputs().stream()
                        .map(input -> input.unit().dimension())
                        .toArray(Dimension[]::new);
        return new Function(
                quantity.functionName(),
                quantity.inputs().stream().map(Input::words).toList(),
                Function.fixed(quantity.unit().dimension(), inputs),
                quantity.body()::compute);
    }

    private static Dimension bothSame(Function function, List<Expression> arguments) {
        DimensionRules.requireSame(
                "compares",
                arguments.getFirst(),
                "with",
                arguments.getLast(),
                function.callOf(arguments));
        return arguments.getFirst().dimension();
    }

    private static Function function(String name, Rule rule, Body body, String... parameters) {
        return new Function(name, List.of(parameters), rule, body);
    }
}
