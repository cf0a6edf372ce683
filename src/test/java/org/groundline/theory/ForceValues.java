package org.groundline.theory;

import static org.groundline.theory.Room.of;

/// Check values of the forces on a wing and in its lines.
final class ForceValues {
    static final Room ROOM =
            Room.named(
                    "forces",
                    of("lift_coefficient_glide", ForceValues::liftCoefficient),
                    of("drag_in_glide", g -> Forces.dragInGlide(g.get("mass_kg"), g.get("gr"))),
                    of("lift_in_glide", g -> Forces.liftInGlide(g.get("mass_kg"), g.get("gr"))),
                    of("lift_ratio_speed", g -> lift(g.get("v2")) / lift(g.get("v1"))),
                    of("attitude_from_aoa_glide", ForceValues::attitude),
                    of(
                            "line_level_strength_required",
                            g -> Lines.strengthRequired(g.get("max_weight_kg"))),
                    of("load_on_lines_at_g", g -> Lines.load(g.get("mass_kg"), g.get("g_load"))));

    private ForceValues() {}

    private static double liftCoefficient(Given g) {
        double lift = Forces.liftInGlide(g.get("mass_kg"), g.get("gr"));
        return Forces.coefficient(lift, g.get("area_m2"), g.airspeed(), g.get("rho"));
    }

    private static double lift(double airspeed) {
        return Forces.force(0.6, 25, airspeed, StandardAtmosphere.SEA_LEVEL_DENSITY);
    }

    private static double attitude(Given g) {
        double glideAngle = Glide.angle(g.get("gr"));
        return Math.toDegrees(Forces.attitude(g.si("aoa_deg", "°"), glideAngle));
    }
}
