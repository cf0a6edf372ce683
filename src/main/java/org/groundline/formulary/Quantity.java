package org.groundline.formulary;

import org.groundline.measure.Unit;

import java.util.List;

/// A quantity that can be computed.
///
/// @param name in lower case with hyphens, such as `glide-distance`
/// @param question what it answers, one sentence ending in a question mark
/// @param unit in which the result is usually told
/// @param source where the formula comes from, as its class in `theory` names it
public record Quantity(
        String name, String question, List<Input> inputs, Unit unit, Body body, String source) {
    public Quantity {
        inputs = List.copyOf(inputs);
        if (!name.matches("[a-z]+[0-9]?(-[a-z0-9]+)*") || !question.endsWith("?")) {
            throw new IllegalArgumentException("not a quantity: " + name + ", " + question);
        }
    }

    /// The formula, over SI values in the order of the inputs.
    @FunctionalInterface
    public interface Body {
        double compute(double... si);
    }

    /// A result in SI with what is to be said about it.
    public record Outcome(double si, List<String> warnings) {
        public Outcome {
            warnings = List.copyOf(warnings);
        }
    }

    /// Computes the quantity.
    ///
    /// @param si the inputs in SI, in their order
    /// @throws IllegalArgumentException if the formula has no meaning for them; the message names
    ///   value, unit and range
    public Outcome compute(double... si) {
        if (si.length != inputs.size()) {
            throw new IllegalArgumentException(
                    "%s takes %d values, not %d".formatted(name, inputs.size(), si.length));
        }
        double result = body.compute(si);
        var warnings = new java.util.ArrayList<String>();
        for (int i = 0; i < si.length; i++) {
            inputs.get(i).warning(si[i]).ifPresent(warnings::add);
        }
        return new Outcome(result, warnings);
    }

    /// The name as a formula of the bank spells it, such as `glide_distance`.
    public String functionName() {
        return name.replace('-', '_');
    }
}
