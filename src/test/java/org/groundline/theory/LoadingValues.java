package org.groundline.theory;

import static org.groundline.theory.Room.of;

/// Check values of mass, area and loading.
final class LoadingValues {
    static final Room ROOM =
            Room.named(
                    "loading",
                    of("speed_scaling_mass", g -> scaledByMass(g, "v")),
                    of("sink_scaling_mass", g -> scaledByMass(g, "w")),
                    of(
                            "wing_loading",
                            g -> Loading.wingLoading(g.get("mass_kg"), g.get("area_m2"))),
                    of("wing_loading_Nm2", LoadingValues::loadingAsForce),
                    of("speed_scaling_density", g -> thinned(g.get("v"), g.get("h_m"))));

    private LoadingValues() {}

    private static double scaledByMass(Given g, String speed) {
        return Loading.speedAtMass(g.get(speed), g.get("m1"), g.get("m2"));
    }

    private static double loadingAsForce(Given g) {
        return Loading.wingLoading(g.get("mass_kg"), g.get("area_m2")) * StandardAtmosphere.GRAVITY;
    }

    static double thinned(double speed, double altitude) {
        return Loading.speedInAir(
                speed, StandardAtmosphere.SEA_LEVEL_DENSITY, StandardAtmosphere.density(altitude));
    }
}
