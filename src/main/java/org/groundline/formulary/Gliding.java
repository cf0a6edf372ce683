package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Glide;

import java.util.List;

/// Gliding: glide ratio, distance, time and height, in wind and in moving air.
final class Gliding {
    private static final String SOURCE =
            "FAA-H-8083-13B, Glider Flying Handbook, 2024, pages 5-10, 11-6 and 11-11";

    private Gliding() {}

    static List<Quantity> quantities() {
        return List.of(
                new Quantity(
                        "glide-distance",
                        "How far does this height carry over the ground?",
                        List.of(
                                Input.of("height", "m", 0, 5000),
                                Input.of("ground-speed", "km/h", 1, 120),
                                Input.of("descent-rate", "m/s", 0.5, 10)),
                        Units.get("m"),
                        si -> Glide.distance(si[0], si[1], si[2]),
                        SOURCE));
    }
}
