package org.groundline.theory;

import static org.groundline.theory.Room.of;

/// Check values of the air: the standard atmosphere and airspeeds.
final class AirValues {
    static final Room ROOM =
            Room.named(
                    "air",
                    of("isa_temperature", g -> StandardAtmosphere.temperature(altitude(g))),
                    of("isa_pressure", g -> StandardAtmosphere.pressure(altitude(g)) / 100),
                    of("isa_density", g -> StandardAtmosphere.density(altitude(g))),
                    of("isa_density_ratio", g -> StandardAtmosphere.densityRatio(altitude(g))),
                    of("tas_exact", AirValues::trueAirspeedKt),
                    of(
                            "tas_exact_kmh",
                            g ->
                                    StandardAtmosphere.trueAirspeed(
                                            g.get("ias_kmh"), g.get("alt_m"))));

    private AirValues() {}

    private static double altitude(Given g) {
        return g.get("h_geopotential_m");
    }

    private static double trueAirspeedKt(Given g) {
        return StandardAtmosphere.trueAirspeed(g.get("ias_kt"), g.si("alt_ft", "ft"));
    }
}
