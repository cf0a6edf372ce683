package org.groundline.formulary;

import org.groundline.measure.Unit;
import org.groundline.measure.Units;

import java.util.Optional;

/// One thing that a quantity is computed from.
///
/// @param name in lower case with hyphens, such as `ground-speed`
/// @param unit in which it is usually given, and in which the two bounds are
/// @param low the lowest value for which the formula is published or the figure is sensible
/// @param high the highest such value; outside the two the result comes with a warning. Where the
///   formula has no meaning at all, it refuses by itself
public record Input(String name, Unit unit, double low, double high) {
    public Input {
        if (!name.matches("[a-z]+[0-9]?(-[a-z]+[0-9]?)*")) {
            throw new IllegalArgumentException("not an input's name: " + name);
        }
        if (!(low < high)) {
            throw new IllegalArgumentException(name + ": %s is not below %s".formatted(low, high));
        }
    }

    static Input of(String name, String unit, double low, double high) {
        return new Input(name, Units.get(unit), low, high);
    }

    /// The name as people say it, such as `ground speed`.
    public String words() {
        return name.replace('-', ' ');
    }

    Optional<String> warning(double si) {
        double value = unit.fromSi(si);
        return value >= low && value <= high
                ? Optional.empty()
                : Optional.of(
                        "%s is %s, outside %s to %s: the result is computed, but it may not hold"
                                .formatted(words(), print(value), print(low), print(high)));
    }

    private String print(double value) {
        return unit.print(java.math.BigDecimal.valueOf(value));
    }
}
