package org.groundline.theory;

import static org.groundline.theory.Room.of;

import java.util.List;

/// Check values of the quadratic polar. Rows in knots work as well as rows in metres a second, as
/// long as speeds and sink rates have one unit.
final class PolarValues {
    static final Room ROOM =
            Room.named(
                    "polar",
                    of("polar_min_sink_speed", g -> polar(g).minimumSinkSpeed()),
                    of("polar_min_sink", g -> polar(g).minimumSink()),
                    of("polar_best_glide_speed", g -> polar(g).bestGlideSpeed()),
                    of("polar_best_glide_ratio", g -> polar(g).bestGlideRatio()),
                    of(
                            "polar_speed_to_fly",
                            g -> polar(g).speedToFly(g.get("headwind"), g.get("sink"))),
                    of(
                            "polar_ground_glide_ratio_optimum",
                            g -> polar(g).bestRatioOverGround(g.get("headwind"), g.get("sink"))),
                    of("mccready_average_speed", g -> polar(g).crossCountrySpeed(g.get("climb"))),
                    of("speed_to_fly_sink_chart", PolarValues::speedToFlyOfTheHandbook));

    private PolarValues() {}

    private static Polar polar(Given g) {
        return new Polar(g.get("a"), g.get("b"), g.get("c"));
    }

    /// The handbook's polar, drawn through minimum sink at 40 kt and 1.9 kt and best glide at 2.1
    /// kt.
    private static double speedToFlyOfTheHandbook(Given g) {
        double bestGlide = g.get("v_bestglide_kt");
        var drawn =
                Polar.fitted(
                        List.of(
                                new Polar.Point(2 * 40 - bestGlide, 2.1),
                                new Polar.Point(40, 1.9),
                                new Polar.Point(bestGlide, 2.1)));
        return drawn.speedToFly(0, g.get("airmass_sink_kt"));
    }
}
