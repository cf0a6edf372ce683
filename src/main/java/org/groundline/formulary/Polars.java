package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Polar;
import org.groundline.theory.Polar.Point;

import java.util.List;
import java.util.stream.Stream;

/// The speed polar as a parabola w = a V² + b V + c: its own speeds, speeds to fly, and its fit.
final class Polars {
    private static final String SOURCE =
            "FAA-H-8083-13B, Glider Flying Handbook, 2024, pages 5-10 and 5-11; "
                    + "equations of the parabola derived";
    private static final List<Input> POLAR =
            List.of(
                    Input.of("a", "s/m", 0.001, 0.1),
                    Input.of("b", "", -2, -0.01),
                    Input.of("c", "m/s", 0.5, 10));

    /// From slow to fast.
    private static final List<Input> POINTS =
            List.of(
                    Input.of("speed1", "km/h", 20, 60),
                    Input.of("sink-rate1", "m/s", 0.5, 2),
                    Input.of("speed2", "km/h", 25, 80),
                    Input.of("sink-rate2", "m/s", 0.5, 3),
                    Input.of("speed3", "km/h", 30, 130),
                    Input.of("sink-rate3", "m/s", 0.5, 10));

    private Polars() {}

    static List<Quantity> quantities() {
        return List.of(
                quantity(
                        "minimum-sink-speed",
                        "At which airspeed does a wing of this polar sink least?",
                        POLAR,
                        "km/h",
                        si -> polar(si).minimumSinkSpeed()),
                quantity(
                        "minimum-sink",
                        "How little can a wing of this polar sink?",
                        POLAR,
                        "m/s",
                        si -> polar(si).minimumSink()),
                quantity(
                        "best-glide-speed",
                        "At which airspeed does a wing of this polar glide furthest in still air?",
                        POLAR,
                        "km/h",
                        si -> polar(si).bestGlideSpeed()),
                quantity(
                        "best-glide-ratio",
                        "How far for one down does a wing of this polar glide at best?",
                        POLAR,
                        "",
                        si -> polar(si).bestGlideRatio()),
                quantity(
                        "polar-sink-rate",
                        "How fast does a wing of this polar sink at this airspeed?",
                        polarWith(Input.of("airspeed", "km/h", 15, 130)),
                        "m/s",
                        si -> polar(si).sinkRate(si[3])),
                quantity(
                        "polar-sink-rate-in-turn",
                        "How fast does a wing of this polar sink in a turn flown at this airspeed?",
                        polarWith(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("bank", "°", 0, 60)),
                        "m/s",
                        si -> polar(si).sinkRateInTurn(si[3], si[4])),
                quantity(
                        "speed-to-fly",
                        "At which airspeed does a glide to a fixed place lose least height?",
                        polarWith(
                                Input.of("headwind", "km/h", -60, 60),
                                Input.of("sink-of-the-air", "m/s", -5, 10)),
                        "km/h",
                        si -> polar(si).speedToFly(si[3], si[4])),
                quantity(
                        "speed-to-fly-up-to",
                        "Which airspeed up to the highest loses least height to a fixed place?",
                        polarWith(
                                Input.of("maximum-speed", "km/h", 25, 150),
                                Input.of("headwind", "km/h", -60, 60),
                                Input.of("sink-of-the-air", "m/s", -5, 10)),
                        "km/h",
                        si -> polar(si).speedToFlyUpTo(si[3], si[4], si[5])),
                quantity(
                        "best-glide-ratio-over-ground",
                        "How far over the ground for one down at best, in wind and in moving air?",
                        polarWith(
                                Input.of("headwind", "km/h", -60, 60),
                                Input.of("sink-of-the-air", "m/s", -5, 10)),
                        "",
                        si -> polar(si).bestRatioOverGround(si[3], si[4])),
                quantity(
                        "speed-between-thermals",
                        "How fast between thermals, if the next one lifts this much?",
                        polarWith(
                                Input.of("climb", "m/s", 0, 10),
                                Input.of("sink-of-the-air", "m/s", -5, 10)),
                        "km/h",
                        si -> polar(si).speedBetweenThermals(si[3], si[4])),
                quantity(
                        "speed-between-thermals-up-to",
                        "Which airspeed up to the highest between thermals?",
                        polarWith(
                                Input.of("maximum-speed", "km/h", 25, 150),
                                Input.of("climb", "m/s", 0, 10),
                                Input.of("sink-of-the-air", "m/s", -5, 10)),
                        "km/h",
                        si -> polar(si).speedBetweenThermalsUpTo(si[3], si[4], si[5])),
                quantity(
                        "polar-cross-country-speed",
                        "How fast across country on average at the speed between thermals?",
                        polarWith(Input.of("climb", "m/s", 0.1, 10)),
                        "km/h",
                        si -> polar(si).crossCountrySpeed(si[3])),
                quantity(
                        "polar-a-at-mass",
                        "Which a has this polar at another mass?",
                        polarWith(
                                Input.of("mass", "kg", 40, 250),
                                Input.of("new-mass", "kg", 40, 250)),
                        "s/m",
                        si -> polar(si).atMass(si[3], si[4]).a()),
                quantity(
                        "polar-c-at-mass",
                        "Which c has this polar at another mass, where b stays as it is?",
                        polarWith(
                                Input.of("mass", "kg", 40, 250),
                                Input.of("new-mass", "kg", 40, 250)),
                        "m/s",
                        si -> polar(si).atMass(si[3], si[4]).c()),
                quantity(
                        "fitted-polar-a",
                        "Which a has the polar through three measured points?",
                        POINTS,
                        "s/m",
                        si -> fitted(si).a()),
                quantity(
                        "fitted-polar-b",
                        "Which b has the polar through three measured points?",
                        POINTS,
                        "",
                        si -> fitted(si).b()),
                quantity(
                        "fitted-polar-c",
                        "Which c has the polar through three measured points?",
                        POINTS,
                        "m/s",
                        si -> fitted(si).c()));
    }

    private static Quantity quantity(
            String name, String question, List<Input> inputs, String unit, Quantity.Body body) {
        return new Quantity(name, question, inputs, Units.get(unit), body, SOURCE);
    }

    private static List<Input> polarWith(Input... more) {
        return Stream.concat(POLAR.stream(), Stream.of(more)).toList();
    }

    private static Polar polar(double... si) {
        return new Polar(si[0], si[1], si[2]);
    }

    private static Polar fitted(double... si) {
        return Polar.fitted(
                List.of(new Point(si[0], si[1]), new Point(si[2], si[3]), new Point(si[4], si[5])));
    }
}
