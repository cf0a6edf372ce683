package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Glide;

import java.util.List;

/// Gliding: glide ratio, distance, time and height, in wind and in moving air.
final class Gliding {
    private static final String SOURCE =
            "FAA-H-8083-13B, Glider Flying Handbook, 2024, pages 3-5, 5-4, 5-10, 11-6 and 11-11";

    private Gliding() {}

    static List<Quantity> quantities() {
        return List.of(
                new Quantity(
                        "glide-ratio",
                        "How many metres forward for one down, in still air?",
                        List.of(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("sink-rate", "m/s", 0.5, 20)),
                        Units.get(""),
                        si -> Glide.ratio(si[0], si[1]),
                        SOURCE),
                new Quantity(
                        "glide-angle",
                        "How steep is a glide path of this ratio?",
                        List.of(Input.of("glide-ratio", "", 1, 60)),
                        Units.get("°"),
                        si -> Glide.angle(si[0]),
                        SOURCE),
                new Quantity(
                        "ground-speed",
                        "How fast over the ground along the track?",
                        List.of(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("headwind", "km/h", -60, 60)),
                        Units.get("km/h"),
                        si -> Glide.groundSpeed(si[0], si[1]),
                        SOURCE),
                new Quantity(
                        "descent-rate",
                        "How fast does the glider go down in moving air?",
                        List.of(
                                Input.of("sink-rate", "m/s", 0.5, 20),
                                Input.of("sink-of-the-air", "m/s", -5, 10)),
                        Units.get("m/s"),
                        si -> Glide.descentRate(si[0], si[1]),
                        SOURCE),
                new Quantity(
                        "glide-distance",
                        "How far does this height carry over the ground?",
                        List.of(
                                Input.of("height", "m", 0, 5000),
                                Input.of("ground-speed", "km/h", 1, 150),
                                Input.of("descent-rate", "m/s", 0.5, 20)),
                        Units.get("m"),
                        si -> Glide.distance(si[0], si[1], si[2]),
                        SOURCE),
                new Quantity(
                        "glide-time",
                        "How long does this height last?",
                        List.of(
                                Input.of("height", "m", 0, 5000),
                                Input.of("descent-rate", "m/s", 0.5, 20)),
                        Units.get("s"),
                        si -> Glide.time(si[0], si[1]),
                        SOURCE),
                new Quantity(
                        "height-needed",
                        "How much height does it take to arrive with a reserve?",
                        List.of(
                                Input.of("distance", "m", 0, 30000),
                                Input.of("ground-speed", "km/h", 1, 150),
                                Input.of("descent-rate", "m/s", 0.5, 20),
                                Input.of("reserve", "m", 0, 500)),
                        Units.get("m"),
                        si -> Glide.heightNeeded(si[0], si[1], si[2], si[3]),
                        SOURCE),
                new Quantity(
                        "glide-ratio-flown",
                        "Which glide ratio was flown over this distance?",
                        List.of(
                                Input.of("distance", "m", 1, 100000),
                                Input.of("height-lost", "m", 1, 5000)),
                        Units.get(""),
                        si -> Glide.ratioFlown(si[0], si[1]),
                        SOURCE),
                new Quantity(
                        "sink-rate-at-glide-ratio",
                        "How fast does a wing of this glide ratio sink at this airspeed?",
                        List.of(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("glide-ratio", "", 6, 30)),
                        Units.get("m/s"),
                        si -> Glide.sinkRate(si[0], si[1]),
                        SOURCE),
                new Quantity(
                        "glide-ratio-in-wind",
                        "How far over the ground for one down, in this wind?",
                        List.of(
                                Input.of("glide-ratio", "", 6, 30),
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("headwind", "km/h", -60, 60)),
                        Units.get(""),
                        si -> Glide.ratioInWind(si[0], si[1], si[2]),
                        SOURCE),
                new Quantity(
                        "glide-ratio-over-ground",
                        "How far over the ground for one down, in wind and in moving air?",
                        List.of(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("headwind", "km/h", -60, 60),
                                Input.of("sink-rate", "m/s", 0.5, 20),
                                Input.of("sink-of-the-air", "m/s", -5, 10)),
                        Units.get(""),
                        si -> Glide.ratioOverGround(si[0], si[1], si[2], si[3]),
                        SOURCE),
                new Quantity(
                        "speed-by-half-headwind-rule",
                        "Which airspeed does the half-headwind rule for sailplanes give?",
                        List.of(
                                Input.of("best-glide-speed", "km/h", 25, 130),
                                Input.of("headwind", "km/h", 0, 60)),
                        Units.get("km/h"),
                        si -> Glide.speedByHalfHeadwindRule(si[0], si[1]),
                        SOURCE));
    }
}
