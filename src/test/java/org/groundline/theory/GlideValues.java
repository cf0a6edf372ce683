package org.groundline.theory;

import static org.groundline.theory.Room.of;

/// Check values of the straight glide.
final class GlideValues {
    static final Room ROOM =
            Room.named(
                    "glide",
                    of("glide_ratio", g -> Glide.ratio(g.get("v"), g.get("w"))),
                    of("effective_glide_ratio", GlideValues::ratioWithTailwind),
                    of(
                            "ground_speed_along",
                            g -> Glide.groundSpeed(g.get("tas_kt"), g.get("headwind_kt"))),
                    of("height_needed_sum", GlideValues::heightOverCircuit),
                    of("implied_effective_glide_ratio", GlideValues::ratioFromDistance),
                    of(
                            "time_to_ground",
                            g -> Glide.time(g.si("height_ft", "ft"), g.si("sink_fpm", "fpm"))),
                    of("time_to_ground_si", g -> Glide.time(g.get("height_m"), g.get("sink_ms"))),
                    of("glide_distance", g -> Glide.distance(g.get("height_m"), g.get("gr"), 1)),
                    of("glide_distance_wind", GlideValues::distanceInWind),
                    of("glide_angle", g -> Math.toDegrees(Glide.angle(g.get("gr")))),
                    of("height_needed", GlideValues::heightNeeded),
                    of("glide_ratio_in_sinking_air", GlideValues::ratioInSink),
                    of("speed_to_fly_half_headwind_rule", GlideValues::speedByRule));

    private GlideValues() {}

    private static double ratioWithTailwind(Given g) {
        return Glide.ratioInWind(g.get("gr_air"), g.get("v_kt"), -g.get("tailwind_kt"));
    }

    private static double heightOverCircuit(Given g) {
        return Glide.heightNeeded(g.get("glide_loss_ft"), 1, 1, g.get("circuit_ft"));
    }

    private static double ratioFromDistance(Given g) {
        return Glide.ratioFlown(g.si("distance_NM", "NM"), g.si("height_loss_ft", "ft"));
    }

    private static double distanceInWind(Given g) {
        return Glide.distance(g.get("height_m"), g.groundSpeed(), g.get("sink_ms"));
    }

    private static double heightNeeded(Given g) {
        return Glide.heightNeeded(
                g.get("distance_m"), g.groundSpeed(), g.get("sink_ms"), g.get("reserve_m"));
    }

    private static double ratioInSink(Given g) {
        return Glide.ratioOverGround(g.airspeed(), 0, g.get("sink_ms"), g.get("airmass_sink_ms"));
    }

    private static double speedByRule(Given g) {
        return Glide.speedByHalfHeadwindRule(g.get("v_bestglide_kt"), g.get("headwind_kt"));
    }
}
