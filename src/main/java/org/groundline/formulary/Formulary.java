package org.groundline.formulary;

import static java.util.function.Function.identity;
import static java.util.stream.Collectors.toUnmodifiableMap;

import org.groundline.error.Refusal;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/// All quantities that can be computed, by name.
public final class Formulary {
    private static final Map<String, Quantity> BY_NAME =
            Stream.of(
                            Gliding.quantities(),
                            Atmosphere.quantities(),
                            Moisture.quantities(),
                            Altitudes.quantities(),
                            Winds.quantities(),
                            Gusts.quantities(),
                            Clouds.quantities(),
                            ThermalDays.quantities(),
                            Humans.quantities(),
                            Polars.quantities(),
                            RisingAir.quantities(),
                            Masses.quantities(),
                            Turning.quantities(),
                            Reserves.quantities(),
                            Aerodynamics.quantities(),
                            Fields.quantities())
                    .flatMap(List::stream)
                    .collect(toUnmodifiableMap(Quantity::name, identity()));

    private Formulary() {}

    public static Optional<Quantity> find(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }

    /// Computes a quantity from what somebody typed.
    ///
    /// @param given a number for each input, with its unit or in the input's own; decimals have a
    ///   point
    /// @throws Refusal.NotFound if there is no such quantity
    /// @throws Refusal.Invalid if an input is missing, unknown or cannot be read, or if there is no
    ///   answer for them
    public static Evaluation evaluate(String name, Map<String, String> given) {
        Quantity quantity =
                find(name)
                        .orElseThrow(
                                () ->
                                        new Refusal.NotFound(
                                                "There is no quantity “%s”. “theory list” shows them all."
                                                        .formatted(name)));
        return Evaluation.of(quantity, given);
    }

    /// All quantities in the order of their names.
    public static List<Quantity> list() {
        return BY_NAME.values().stream().sorted(Comparator.comparing(Quantity::name)).toList();
    }
}
