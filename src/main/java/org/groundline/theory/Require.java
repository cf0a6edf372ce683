package org.groundline.theory;

/// The guards of the formulas. The name of a quantity carries its unit.
final class Require {
    private Require() {}

    static void positive(String quantity, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw refused(quantity, value, "must be above zero and finite");
        }
    }

    static void notNegative(String quantity, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw refused(quantity, value, "must be zero or above and finite");
        }
    }

    static void finite(String quantity, double value) {
        if (!Double.isFinite(value)) {
            throw refused(quantity, value, "must be finite");
        }
    }

    static void between(String quantity, double value, double lowest, double highest) {
        if (!(value >= lowest && value <= highest)) {
            throw refused(quantity, value, "must be from %s to %s".formatted(lowest, highest));
        }
    }

    static IllegalArgumentException refused(String quantity, double value, String rule) {
        return new IllegalArgumentException("%s %s, but is %s".formatted(quantity, rule, value));
    }
}
