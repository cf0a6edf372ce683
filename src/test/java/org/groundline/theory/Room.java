package org.groundline.theory;

import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/// How the rows of one part of the check values are computed: the quantity's name in the file, and
/// what computes it in the unit of the file.
///
/// @param name for messages
record Room(String name, Map<String, ToDoubleFunction<Given>> quantities) {
    Room {
        quantities = Map.copyOf(quantities);
    }

    double compute(String quantity, Given given) {
        return Objects.requireNonNull(quantities.get(quantity), quantity).applyAsDouble(given);
    }

    static Map.Entry<String, ToDoubleFunction<Given>> of(
            String quantity, ToDoubleFunction<Given> function) {
        return Map.entry(quantity, function);
    }

    @SafeVarargs
    static Room named(String name, Map.Entry<String, ToDoubleFunction<Given>>... quantities) {
        return new Room(name, Map.ofEntries(quantities));
    }
}
