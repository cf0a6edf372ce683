package org.groundline.theory;

import static org.groundline.theory.Room.of;

/// Check values of the air: the standard atmosphere, airspeeds and humidity.
final class AirValues {
    private static final double THOUSAND_FEET = 304.8; // (m)

    static final Room ROOM =
            Room.named(
                    "air",
                    of("isa_temperature", g -> StandardAtmosphere.temperature(altitude(g))),
                    of("isa_pressure", g -> StandardAtmosphere.pressure(altitude(g)) / 100),
                    of("isa_density", g -> StandardAtmosphere.density(altitude(g))),
                    of("isa_density_ratio", g -> StandardAtmosphere.densityRatio(altitude(g))),
                    of(
                            "isa_pressure_geometric",
                            g -> StandardAtmosphere.pressure(fromGeometric(g)) / 100),
                    of("isa_density_geometric", g -> StandardAtmosphere.density(fromGeometric(g))),
                    of("isa_lapse_rule", g -> coolingOver(THOUSAND_FEET)),
                    of("tas_exact", AirValues::trueAirspeedKt),
                    of(
                            "tas_exact_kmh",
                            g -> StandardAtmosphere.trueAirspeed(g.get("ias_kmh"), g.get("alt_m"))),
                    of("tas_rule_2pct_per_1000ft", AirValues::trueAirspeedByRule),
                    of(
                            "saturation_vapour_pressure_bolton",
                            g -> Humidity.saturationPressure(g.si("t_C", "°C")) / 100),
                    of("relative_humidity_from_dewpoint", AirValues::relativeHumidity));

    private AirValues() {}

    private static double altitude(Given g) {
        return g.get("h_geopotential_m");
    }

    private static double fromGeometric(Given g) {
        return StandardAtmosphere.geopotentialAltitude(g.get("z_geometric_m"));
    }

    private static double coolingOver(double climb) {
        return StandardAtmosphere.temperature(0) - StandardAtmosphere.temperature(climb);
    }

    private static double trueAirspeedKt(Given g) {
        return StandardAtmosphere.trueAirspeed(g.get("ias_kt"), g.si("alt_ft", "ft"));
    }

    private static double trueAirspeedByRule(Given g) {
        return Airspeed.trueAirspeedByRule(g.get("ias_kt"), g.si("alt_ft", "ft"));
    }

    private static double relativeHumidity(Given g) {
        return 100 * Humidity.relativeHumidity(g.si("t_C", "°C"), g.si("td_C", "°C"));
    }
}
