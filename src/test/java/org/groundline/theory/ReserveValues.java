package org.groundline.theory;

import static org.groundline.theory.Room.of;

/// Check values of the reserve parachute.
final class ReserveValues {
    static final Room ROOM =
            Room.named(
                    "reserve",
                    of("reserve_descent_rate", ReserveValues::sinkRate),
                    of(
                            "reserve_altitude_effect",
                            g -> LoadingValues.thinned(g.get("v_sl_ms"), g.get("h_m"))),
                    of("reserve_area_needed", ReserveValues::areaNeeded),
                    of("impact_speed_from_drop", g -> Reserve.speedAfterFall(g.get("h_m"))),
                    of("reserve_mass_effect", ReserveValues::atMass),
                    of(
                            "kinetic_energy",
                            g -> Reserve.impactEnergy(g.get("mass_kg"), g.get("v_ms"))),
                    of("kinetic_energy_ratio", ReserveValues::energyRatio),
                    of("jump_height_equivalent", g -> Reserve.equalJumpHeight(g.get("v_ms"))));

    private ReserveValues() {}

    private static double sinkRate(Given g) {
        double density = StandardAtmosphere.density(g.get("h_m"));
        return Reserve.sinkRate(g.get("mass_kg"), g.get("area_m2"), g.get("cd"), density);
    }

    private static double areaNeeded(Given g) {
        double density = StandardAtmosphere.density(g.get("h_m"));
        return Reserve.areaNeeded(g.get("mass_kg"), g.get("v_ms"), g.get("cd"), density);
    }

    private static double atMass(Given g) {
        return Loading.speedAtMass(g.get("v1_ms"), g.get("m1_kg"), g.get("m2_kg"));
    }

    private static double energyRatio(Given g) {
        return Reserve.impactEnergy(1, g.get("v2_ms")) / Reserve.impactEnergy(1, g.get("v1_ms"));
    }
}
