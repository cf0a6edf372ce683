package org.groundline.theory;

import static org.groundline.theory.Room.of;

/// Check values of altitudes and altimeters.
final class AltitudeValues {
    private static final double FOOT = 0.3048; // (m)

    static final Room ROOM =
            Room.named(
                    "altitude",
                    of("pressure_altitude", g -> Altitude.pressureAltitude(g.si("p_hPa", "hPa"))),
                    of(
                            "pressure_altitude_correction",
                            g -> Altitude.pressureAltitude(setting(g)) / FOOT),
                    of("pressure_altitude_at_field", g -> pressureAltitude(g) / FOOT),
                    of("pressure_altitude_rule", AltitudeValues::pressureAltitudeByRule),
                    of("density_altitude_chart_reading", AltitudeValues::dryAtFieldFt),
                    of("density_altitude_dry_at_field", AltitudeValues::dryAtFieldFt),
                    of("density_altitude_moist", AltitudeValues::moistAtFieldFt),
                    of(
                            "density_altitude_dry",
                            g ->
                                    Altitude.densityAltitude(
                                            g.get("pressure_altitude_m"), g.si("oat_C", "°C"))),
                    of("density_altitude_rule120", AltitudeValues::densityAltitudeByRuleFt),
                    of("height_per_hPa", g -> 100 * Altimeter.heightPerPressure(g.get("h_m"))),
                    of("qfe_from_qnh", AltitudeValues::fieldPressure),
                    of("qfe_by_rule", AltitudeValues::fieldPressureByRule),
                    of("altimeter_overread_wrong_setting_ft", AltitudeValues::overReadFt),
                    of("altimeter_overread_wrong_setting_m", AltitudeValues::overRead),
                    of("cold_error_pct", AltitudeValues::coldErrorPercent),
                    of("cold_true_height_table", AltitudeValues::shownLessCorrectionFt),
                    of("flight_level_to_ft", g -> Altimeter.flightLevel(g.get("fl")) / FOOT),
                    of("flight_level_true_altitude", AltitudeValues::flightLevelAltitudeFt));

    private AltitudeValues() {}

    private static double setting(Given g) {
        return g.si("altimeter_setting_inHg", "inHg");
    }

    private static double pressureAltitude(Given g) {
        return Altitude.pressureAltitudeOfField(g.si("elev_ft", "ft"), setting(g));
    }

    private static double pressureAltitudeByRule(Given g) {
        return Altitude.pressureAltitudeByRule(
                g.get("elev_m"), g.si("qnh_hPa", "hPa"), g.si("m_per_hPa", "m/hPa"));
    }

    private static double dryAtFieldFt(Given g) {
        return Altitude.densityAltitude(pressureAltitude(g), g.si("oat_F", "°F")) / FOOT;
    }

    private static double moistAtFieldFt(Given g) {
        double altitude =
                Altitude.densityAltitudeMoist(
                        pressureAltitude(g), g.si("oat_C", "°C"), g.si("dewpoint_C", "°C"));
        return altitude / FOOT;
    }

    private static double densityAltitudeByRuleFt(Given g) {
        double altitude =
                Altitude.densityAltitudeByRule(
                        g.si("pressure_altitude_ft", "ft"), g.si("oat_C", "°C"));
        return altitude / FOOT;
    }

    private static double fieldPressure(Given g) {
        return Altimeter.fieldPressure(g.get("elev_m"), g.si("qnh_hPa", "hPa")) / 100;
    }

    private static double fieldPressureByRule(Given g) {
        double pressure =
                Altimeter.fieldPressureByRule(
                        g.get("elev_m"), g.si("qnh_hPa", "hPa"), g.si("m_per_hPa", "m/hPa"));
        return pressure / 100;
    }

    private static double overReadFt(Given g) {
        return Altimeter.overRead(g.si("set_inHg", "inHg"), g.si("correct_inHg", "inHg")) / FOOT;
    }

    private static double overRead(Given g) {
        return Altimeter.overRead(g.si("set_hPa", "hPa"), g.si("correct_hPa", "hPa"));
    }

    private static double coldErrorPercent(Given g) {
        return 100 - Altimeter.trueHeightByRule(100, g.get("isa_deviation_C"));
    }

    /// The source takes the correction for the height shown away from it, although the correction
    /// is made to be added to a height that is to be kept; here the same is done to reproduce it.
    private static double shownLessCorrectionFt(Given g) {
        double shown = g.si("indicated_ft", "ft");
        return (shown - Altimeter.coldCorrection(shown, g.si("surface_temp_C", "°C"))) / FOOT;
    }

    private static double flightLevelAltitudeFt(Given g) {
        return Altimeter.flightLevelAltitude(g.get("fl"), g.si("qnh_hPa", "hPa")) / FOOT;
    }
}
