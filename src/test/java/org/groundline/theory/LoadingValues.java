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
                    of("mean_pressure_difference", LoadingValues::loadingAsForce),
                    of("all_up_mass", LoadingValues::allUpMass),
                    of(
                            "aspect_ratio_span_chord",
                            g ->
                                    Loading.aspectRatioByChord(
                                            g.get("span_ft"), g.get("mean_chord_ft"))),
                    of(
                            "aspect_ratio_span_area",
                            g -> Loading.aspectRatio(g.get("span_ft"), g.get("area_ft2"))),
                    of(
                            "aspect_ratio_span_area_si",
                            g -> Loading.aspectRatio(g.get("span_m"), g.get("area_m2"))),
                    of("speed_scaling_density", g -> thinned(g.get("v"), g.get("h_m"))));

    private LoadingValues() {}

    private static double scaledByMass(Given g, String speed) {
        return Loading.speedAtMass(g.get(speed), g.get("m1"), g.get("m2"));
    }

    private static double loadingAsForce(Given g) {
        return Loading.weightByArea(g.get("mass_kg"), g.get("area_m2"));
    }

    private static double allUpMass(Given g) {
        return Loading.allUpMass(
                g.get("pilot_clothed_kg"),
                g.get("wing_kg"),
                g.get("harness_reserve_kg"),
                g.get("other_kg"));
    }

    static double thinned(double speed, double altitude) {
        return Loading.speedInAir(
                speed, StandardAtmosphere.SEA_LEVEL_DENSITY, StandardAtmosphere.density(altitude));
    }
}
