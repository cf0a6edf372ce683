package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;

import org.groundline.measure.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/// Every row of theory/check-values.csv. Its provenance column says *verified* where the number was
/// seen in the named source and *derived* where it was computed by hand from the formula; its
/// tolerance comes from the printed digits, or from a source that rounds more coarsely and says so.
class CheckValuesTest {
    private static final double RHO_0 = StandardAtmosphere.SEA_LEVEL_DENSITY;

    private static final Map<String, ToDoubleFunction<Given>> QUANTITIES =
            Map.ofEntries(
                    of("isa_temperature", g -> StandardAtmosphere.temperature(g.altitude())),
                    of("isa_pressure", g -> StandardAtmosphere.pressure(g.altitude()) / 100),
                    of("isa_density", g -> StandardAtmosphere.density(g.altitude())),
                    of("isa_density_ratio", g -> StandardAtmosphere.densityRatio(g.altitude())),
                    of("tas_exact", CheckValuesTest::trueAirspeedKt),
                    of(
                            "tas_exact_kmh",
                            g -> StandardAtmosphere.trueAirspeed(g.get("ias_kmh"), g.get("alt_m"))),
                    of("glide_ratio", g -> Glide.ratio(g.get("v"), g.get("w"))),
                    of("effective_glide_ratio", CheckValuesTest::ratioWithTailwind),
                    of(
                            "ground_speed_along",
                            g -> Glide.groundSpeed(g.get("tas_kt"), g.get("headwind_kt"))),
                    of("height_needed_sum", CheckValuesTest::heightOverCircuit),
                    of("implied_effective_glide_ratio", CheckValuesTest::ratioFromDistance),
                    of(
                            "time_to_ground",
                            g -> Glide.time(g.si("height_ft", "ft"), g.si("sink_fpm", "fpm"))),
                    of("time_to_ground_si", g -> Glide.time(g.get("height_m"), g.get("sink_ms"))),
                    of("glide_distance", g -> Glide.distance(g.get("height_m"), g.get("gr"), 1)),
                    of("glide_distance_wind", CheckValuesTest::distanceInWind),
                    of("glide_angle", g -> Math.toDegrees(Glide.angle(g.get("gr")))),
                    of("height_needed", CheckValuesTest::heightNeeded),
                    of("glide_ratio_in_sinking_air", CheckValuesTest::ratioInSink),
                    of("speed_scaling_mass", g -> scaledByMass(g, "v")),
                    of("sink_scaling_mass", g -> scaledByMass(g, "w")),
                    of(
                            "wing_loading",
                            g -> Loading.wingLoading(g.get("mass_kg"), g.get("area_m2"))),
                    of("wing_loading_Nm2", CheckValuesTest::loadingAsForce),
                    of("speed_scaling_density", g -> thinned(g.get("v"), g.get("h_m"))),
                    of("load_factor", g -> Turn.loadFactor(g.bank())),
                    of(
                            "stall_speed_increase_pct",
                            g -> 100 * Turn.stallSpeed(1, Turn.loadFactor(g.bank())) - 100),
                    of("stall_speed_factor_from_n", g -> Turn.stallSpeed(1, g.get("n"))),
                    of("accelerated_stall_speed", g -> Turn.stallSpeed(g.get("vs"), g.get("n"))),
                    of("load_factor_from_speed_ratio", CheckValuesTest::loadFactorByStallSpeed),
                    of("reserve_descent_rate", CheckValuesTest::reserveSinkRate),
                    of("reserve_altitude_effect", g -> thinned(g.get("v_sl_ms"), g.get("h_m"))),
                    of("reserve_mass_effect", CheckValuesTest::reserveAtMass),
                    of(
                            "kinetic_energy",
                            g -> Reserve.impactEnergy(g.get("mass_kg"), g.get("v_ms"))),
                    of("kinetic_energy_ratio", CheckValuesTest::energyRatio),
                    of("jump_height_equivalent", g -> Reserve.equalJumpHeight(g.get("v_ms"))));

    @ParameterizedTest(name = "{0} {1} [{6}] {7}")
    @CsvFileSource(resources = "/theory/check-values.csv", numLinesToSkip = 1)
    void theKernelReproducesTheCheckValue(
            String id,
            String quantity,
            String inputs,
            double expected,
            String unit,
            double tolerance,
            String provenance,
            String source)
            throws Exception {
        assertThat(provenance).isIn("verified", "derived");
        assertThat(source).isNotBlank();
        var given = new Given(JsonMapper.builder().build().readTree(inputs));
        var function = Objects.requireNonNull(QUANTITIES.get(quantity), quantity);
        assertThat(function.applyAsDouble(given))
                .as("%s (%s)", id, unit)
                .isCloseTo(expected, within(tolerance));
    }

    private static double trueAirspeedKt(Given g) {
        return StandardAtmosphere.trueAirspeed(g.get("ias_kt"), g.si("alt_ft", "ft"));
    }

    private static double ratioWithTailwind(Given g) {
        double airspeed = g.get("v_kt");
        double groundSpeed = Glide.groundSpeed(airspeed, -g.get("tailwind_kt"));
        return Glide.ratio(groundSpeed, airspeed / g.get("gr_air"));
    }

    private static double heightOverCircuit(Given g) {
        return Glide.heightNeeded(g.get("glide_loss_ft"), 1, 1, g.get("circuit_ft"));
    }

    private static double ratioFromDistance(Given g) {
        return Glide.ratio(g.si("distance_NM", "NM"), g.si("height_loss_ft", "ft"));
    }

    private static double distanceInWind(Given g) {
        return Glide.distance(g.get("height_m"), g.groundSpeed(), g.get("sink_ms"));
    }

    private static double heightNeeded(Given g) {
        return Glide.heightNeeded(
                g.get("distance_m"), g.groundSpeed(), g.get("sink_ms"), g.get("reserve_m"));
    }

    private static double ratioInSink(Given g) {
        double descentRate = Glide.descentRate(g.get("sink_ms"), g.get("airmass_sink_ms"));
        return Glide.ratio(g.si("v_kmh", "km/h"), descentRate);
    }

    private static double scaledByMass(Given g, String speed) {
        return Loading.speedAtMass(g.get(speed), g.get("m1"), g.get("m2"));
    }

    private static double loadingAsForce(Given g) {
        return Loading.wingLoading(g.get("mass_kg"), g.get("area_m2")) * StandardAtmosphere.GRAVITY;
    }

    private static double thinned(double speed, double altitude) {
        return Loading.speedInAir(speed, RHO_0, StandardAtmosphere.density(altitude));
    }

    /// The load under which the stall speed is this many times higher, by bisection.
    private static double loadFactorByStallSpeed(Given g) {
        double low = 1;
        double high = 100;
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            if (Turn.stallSpeed(1, middle) < g.get("v_over_vs")) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double reserveSinkRate(Given g) {
        double density = StandardAtmosphere.density(g.get("h_m"));
        return Reserve.sinkRate(g.get("mass_kg"), g.get("area_m2"), g.get("cd"), density);
    }

    private static double reserveAtMass(Given g) {
        return Loading.speedAtMass(g.get("v1_ms"), g.get("m1_kg"), g.get("m2_kg"));
    }

    private static double energyRatio(Given g) {
        return Reserve.impactEnergy(1, g.get("v2_ms")) / Reserve.impactEnergy(1, g.get("v1_ms"));
    }

    private static Map.Entry<String, ToDoubleFunction<Given>> of(
            String quantity, ToDoubleFunction<Given> function) {
        return Map.entry(quantity, function);
    }

    /// The inputs of a row; a name ends in its unit.
    private record Given(JsonNode inputs) {
        double get(String name) {
            assertThat(inputs.has(name)).as("input " + name).isTrue();
            return inputs.get(name).asDouble();
        }

        double si(String name, String unit) {
            return Units.get(unit).toSi(get(name));
        }

        double altitude() {
            return get("h_geopotential_m");
        }

        double bank() {
            return si("bank_deg", "°");
        }

        double groundSpeed() {
            return Glide.groundSpeed(si("v_kmh", "km/h"), si("headwind_kmh", "km/h"));
        }
    }
}
