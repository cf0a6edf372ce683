package org.groundline.theory;

import static org.groundline.theory.Room.of;

import org.groundline.measure.Units;

import java.math.BigDecimal;

/// Check values of the wind: units, scale, triangle, gradient and gusts.
final class WindValues {
    static final Room ROOM =
            Room.named(
                    "wind",
                    of("unit_convert", WindValues::converted),
                    of("beaufort_lower_kt", g -> knots(Beaufort.lowest(g.get("force")))),
                    of("beaufort_upper_kt", g -> knots(Beaufort.highest(g.get("force")))),
                    of("beaufort_mean_ms", g -> Beaufort.meanSpeed(g.get("force"))),
                    of("wind_component_u", g -> Wind.eastward(g.get("speed_ms"), from(g))),
                    of("wind_component_v", g -> Wind.northward(g.get("speed_ms"), from(g))),
                    of("wind_dir_from_uv", g -> Math.toDegrees(Wind.from(g.get("u"), g.get("v")))),
                    of("wind_speed_from_uv", g -> Wind.speed(g.get("u"), g.get("v"))),
                    of("wind_correction_angle", WindValues::correctionAngleDeg),
                    of("ground_speed_triangle", WindValues::groundSpeed),
                    of("headwind_component", g -> Wind.headwind(g.get("wind_kmh"), angle(g))),
                    of("crosswind_component", g -> Wind.crosswind(g.get("wind_kmh"), angle(g))),
                    of("log_wind_profile", WindValues::logarithmic),
                    of("power_law_wind", WindValues::power),
                    of("gradient_airspeed_margin", WindValues::airspeedMargin),
                    of("gust_factor", g -> Gust.factor(g.get("mean"), g.get("gust"))),
                    of(
                            "gust_speed_addition",
                            g -> Gust.sailplaneAddition(g.get("mean_kt"), g.get("gust_kt"))),
                    of("dynamic_pressure", g -> Gust.dynamicPressure(g.get("v_ms"), g.get("rho"))),
                    of("wind_force_ratio", g -> Gust.forceRatio(g.get("v1"), g.get("v2"))));

    private WindValues() {}

    private static double converted(Given g) {
        var value = BigDecimal.valueOf(g.get("value"));
        return Units.get(g.text("from")).convert(value, Units.get(g.text("to"))).doubleValue();
    }

    private static double knots(double speed) {
        return Units.get("kt").fromSi(speed);
    }

    private static double from(Given g) {
        return g.si("dir_from_deg", "°");
    }

    private static double angle(Given g) {
        return g.si("angle_deg", "°");
    }

    private static double offCourse(Given g) {
        return Wind.angle(g.si("course_deg", "°"), g.si("wind_from_deg", "°"));
    }

    private static double correctionAngleDeg(Given g) {
        return Math.toDegrees(
                Wind.correctionAngle(g.get("tas_kmh"), g.get("wind_kmh"), offCourse(g)));
    }

    private static double groundSpeed(Given g) {
        return Wind.groundSpeed(g.get("tas_kmh"), g.get("wind_kmh"), offCourse(g));
    }

    private static double logarithmic(Given g) {
        return WindProfile.logarithmic(
                g.get("v_ref"), g.get("z_ref_m"), g.get("z_m"), g.get("z0_m"));
    }

    private static double power(Given g) {
        return WindProfile.power(g.get("v_ref"), g.get("z_ref_m"), g.get("z_m"), g.get("alpha"));
    }

    private static double airspeedMargin(Given g) {
        return WindProfile.airspeedMargin(
                g.get("v_kmh"),
                g.get("wind_above_kmh"),
                g.get("wind_below_kmh"),
                g.get("stall_kmh"));
    }
}
