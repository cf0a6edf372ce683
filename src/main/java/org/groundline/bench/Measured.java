package org.groundline.bench;

/// What was measured.
///
/// @param value the mean of all rounds
/// @param error half the width of its 99.9 % interval
/// @param mark what it has to reach, or to stay under
public record Measured(
        String name, String unit, double value, double error, Bound bound, double mark) {
    /// In one line, such as "posing: 120,000 ± 800 items a second; the mark is at least 100,000".
    public String text() {
        String numbers = mark < 100 ? "%s: %,.2f ± %,.2f %s" : "%s: %,.0f ± %,.0f %s";
        String reached = numbers.formatted(name, value, error, unit);
        return reached + "; the mark is %s %,.1f".formatted(bound.words(), mark).replace(".0", "");
    }
}
