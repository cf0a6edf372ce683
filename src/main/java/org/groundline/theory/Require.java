package org.groundline.theory;

/// The guards of the formulas. The name of a quantity carries its unit.
///
/// No quantity met in flight is beyond 10¹² of its SI unit or, where it is not zero, below 10⁻¹² of
/// it. Keeping to these sizes keeps each formula away from overflow and from dividing by next to
/// nothing.
final class Require {
    private static final double SMALLEST = 1e-12;
    private static final double LARGEST = 1e12;

    private Require() {}

    static void positive(String quantity, double value) {
        if (!(value >= SMALLEST && value <= LARGEST)) {
            throw refused(quantity, value, "must be above zero, from 1e-12 to 1e12");
        }
    }

    static void notNegative(String quantity, double value) {
        if (!(value >= 0 && value <= LARGEST)) {
            throw refused(quantity, value, "must be zero or above, up to 1e12");
        }
    }

    static void finite(String quantity, double value) {
        if (!(Math.abs(value) <= LARGEST)) {
            throw refused(quantity, value, "must be a number from -1e12 to 1e12");
        }
    }

    static void between(String quantity, double value, double lowest, double highest) {
        if (!(value >= lowest && value <= highest)) {
            throw refused(quantity, value, "must be from %s to %s".formatted(lowest, highest));
        }
    }

    static void below(String quantity, double value, String limit, double bound) {
        finite(quantity, value);
        if (value >= bound) {
            throw refused(quantity, value, "must be below %s, %s".formatted(limit, bound));
        }
    }

    static IllegalArgumentException refused(String quantity, double value, String rule) {
        return new IllegalArgumentException("%s %s, but is %s".formatted(quantity, rule, value));
    }
}
