package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Loading;

import java.util.List;

/// Mass and area, and what they do to the speeds.
final class Masses {
    private static final String SPEEDS = "FAA-H-8083-13B, Glider Flying Handbook, 2024, page 5-8";
    private static final String SAME_LIFT = "derived: the same lift at the same angle of attack";
    private static final String ASPECT = "FAA-H-8083-13B, Glider Flying Handbook, 2024, page 3-7";
    private static final String DEFINITION = "derived: a sum, and weight and mass over area";
    private static final String RULE =
            "common practice, no source; the tangent of the square root, derived";

    private Masses() {}

    static List<Quantity> quantities() {
        return List.of(
                new Quantity(
                        "all-up-mass",
                        "What does everything that takes off weigh together?",
                        List.of(
                                Input.of("pilot", "kg", 30, 200),
                                Input.of("wing", "kg", 0, 60),
                                Input.of("harness", "kg", 0, 30),
                                Input.of("equipment", "kg", 0, 50)),
                        Units.get("kg"),
                        si -> Loading.allUpMass(si[0], si[1], si[2], si[3]),
                        DEFINITION),
                new Quantity(
                        "wing-loading",
                        "How much mass does a square metre of wing carry?",
                        List.of(
                                Input.of("all-up-mass", "kg", 40, 250),
                                Input.of("area", "m²", 8, 45)),
                        Units.get("kg/m²"),
                        si -> Loading.wingLoading(si[0], si[1]),
                        DEFINITION),
                new Quantity(
                        "weight-by-area",
                        "How much weight, and mean pressure difference, does a square metre carry?",
                        List.of(
                                Input.of("all-up-mass", "kg", 40, 250),
                                Input.of("area", "m²", 8, 45)),
                        Units.get("N/m²"),
                        si -> Loading.weightByArea(si[0], si[1]),
                        DEFINITION),
                new Quantity(
                        "aspect-ratio",
                        "How slender is a wing of this span and area?",
                        List.of(Input.of("span", "m", 5, 20), Input.of("area", "m²", 8, 45)),
                        Units.get(""),
                        si -> Loading.aspectRatio(si[0], si[1]),
                        ASPECT),
                new Quantity(
                        "aspect-ratio-by-chord",
                        "How slender is a wing of this span and mean chord?",
                        List.of(Input.of("span", "m", 5, 20), Input.of("mean-chord", "m", 0.5, 4)),
                        Units.get(""),
                        si -> Loading.aspectRatioByChord(si[0], si[1]),
                        ASPECT),
                new Quantity(
                        "speed-at-mass",
                        "How fast is the same wing at another mass?",
                        List.of(
                                Input.of("speed", "km/h", 0.1, 130),
                                Input.of("mass", "kg", 40, 250),
                                Input.of("new-mass", "kg", 40, 250)),
                        Units.get("km/h"),
                        si -> Loading.speedAtMass(si[0], si[1], si[2]),
                        SPEEDS),
                new Quantity(
                        "speed-at-mass-by-rule",
                        "How fast is it at another mass by the rule of half the percentage?",
                        List.of(
                                Input.of("speed", "km/h", 0.1, 130),
                                Input.of("mass", "kg", 40, 250),
                                Input.of("new-mass", "kg", 40, 250)),
                        Units.get("km/h"),
                        si -> Loading.speedAtMassByRule(si[0], si[1], si[2]),
                        RULE),
                new Quantity(
                        "speed-at-area",
                        "How fast is a wing of the same kind and another size?",
                        List.of(
                                Input.of("speed", "km/h", 0.1, 130),
                                Input.of("area", "m²", 8, 45),
                                Input.of("new-area", "m²", 8, 45)),
                        Units.get("km/h"),
                        si -> Loading.speedAtArea(si[0], si[1], si[2]),
                        SAME_LIFT),
                new Quantity(
                        "speed-in-air",
                        "How fast is the same wing in thinner air?",
                        List.of(
                                Input.of("speed", "km/h", 0.1, 130),
                                Input.of("density", "kg/m³", 0.5, 1.4),
                                Input.of("new-density", "kg/m³", 0.5, 1.4)),
                        Units.get("km/h"),
                        si -> Loading.speedInAir(si[0], si[1], si[2]),
                        SAME_LIFT));
    }
}
