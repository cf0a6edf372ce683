package org.groundline.formulary;

import static java.util.function.Function.identity;
import static java.util.stream.Collectors.toUnmodifiableMap;

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

    /// All quantities in the order of their names.
    public static List<Quantity> list() {
        return BY_NAME.values().stream().sorted(Comparator.comparing(Quantity::name)).toList();
    }
}
