package org.groundline.formulary;

import static java.util.stream.Collectors.joining;

import org.groundline.error.Refusal;
import org.groundline.measure.DecimalConvention;
import org.groundline.measure.Reading;
import org.groundline.measure.TypedNumber;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/// A quantity computed from what somebody typed, as people and programs are told.
///
/// @param name of the quantity
/// @param given what was read for each input, such as `38 km/h`
/// @param value in the unit
/// @param unit its symbol; empty for a plain number
/// @param warnings what of the inputs lies outside its sensible range
/// @param source where the formula comes from
public record Evaluation(
        String name,
        Map<String, String> given,
        double value,
        String unit,
        List<String> warnings,
        String source) {
    public Evaluation {
        given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
        warnings = List.copyOf(warnings);
    }

    /// Computes a quantity.
    ///
    /// @param typed a number for each input, with its unit or in the input's own; decimals have a
    ///   point
    /// @throws Refusal.Invalid if an input is missing, unknown or cannot be read, or if there is no
    ///   answer for them
    static Evaluation of(Quantity quantity, Map<String, String> typed) {
        requireKnown(quantity, typed);
        Map<String, String> echoes = new LinkedHashMap<>();
        double[] si =
                quantity.inputs().stream().mapToDouble(in -> read(in, typed, echoes)).toArray();
        try {
            var outcome = quantity.compute(si);
            return new Evaluation(
                    quantity.name(),
                    echoes,
                    quantity.unit().fromSi(outcome.si()),
                    quantity.unit().symbol(),
                    outcome.warnings(),
                    quantity.source());
        } catch (IllegalArgumentException none) {
            throw new Refusal.Invalid("There is no answer for these values: " + none.getMessage());
        }
    }

    private static void requireKnown(Quantity quantity, Map<String, String> typed) {
        var unknown = new TreeSet<>(typed.keySet());
        quantity.inputs().forEach(input -> unknown.remove(input.name()));
        if (!unknown.isEmpty()) {
            throw new Refusal.Invalid(
                    unknown.getFirst(),
                    "%s does not take %s. %s"
                            .formatted(
                                    quantity.name(), String.join(", ", unknown), usage(quantity)));
        }
        if (!typed.keySet().containsAll(quantity.inputs().stream().map(Input::name).toList())) {
            String missing =
                    quantity.inputs().stream()
                            .map(Input::name)
                            .filter(name -> !typed.containsKey(name))
                            .collect(joining(", "));
            throw new Refusal.Invalid(
                    missing.split(",")[0], missing + " missing. " + usage(quantity));
        }
    }

    private static String usage(Quantity quantity) {
        return quantity.inputs().stream()
                .map(input -> "%s (%s)".formatted(input.name(), input.unit()))
                .collect(joining(", ", "It takes ", "."));
    }

    private static double read(Input input, Map<String, String> typed, Map<String, String> echoes) {
        String text = typed.getOrDefault(input.name(), "");
        return switch (TypedNumber.read(text, input.unit(), DecimalConvention.DOT)) {
            case Reading.Read read -> {
                echoes.put(input.name(), read.echo());
                yield input.unit().toSi(read.value().doubleValue());
            }
            case Reading.Unreadable unreadable ->
                    throw new Refusal.Invalid(input.name(), input.name() + ": " + unreadable.why());
        };
    }
}
