package org.groundline.formulary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.groundline.measure.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// The quantities of flight as a person asks for them: in usual units, by name, in their order.
class FlightQuantitiesTest {
    private static final List<Quantity> OF_FLIGHT =
            Stream.of(
                            Gliding.quantities(),
                            Polars.quantities(),
                            RisingAir.quantities(),
                            Masses.quantities(),
                            Turning.quantities(),
                            Reserves.quantities(),
                            Aerodynamics.quantities(),
                            Fields.quantities())
                    .flatMap(List::stream)
                    .toList();

    @ParameterizedTest(name = "{0} of {1} is {2} ({4})")
    @CsvFileSource(resources = "/formulary/flight-examples.csv", numLinesToSkip = 1)
    void aQuantityAnswersItsExampleWithoutAWarning(
            String name, String inputs, double expected, double tolerance, String source) {
        assertThat(source).isNotBlank();
        var quantity = Formulary.find(name).orElseThrow();
        var outcome = quantity.compute(inSi(quantity, inputs.split(" ")));
        assertThat(quantity.unit().fromSi(outcome.si())).isCloseTo(expected, within(tolerance));
        assertThat(outcome.warnings()).isEmpty();
    }

    @Test
    void everyQuantityOfFlightHasAnExampleAndIsInTheFormulary() throws Exception {
        var examples =
                Files.readAllLines(Path.of("src/test/resources/formulary/flight-examples.csv"))
                        .stream()
                        .skip(1)
                        .map(row -> row.split(",", 2)[0])
                        .collect(Collectors.toSet());
        assertThat(OF_FLIGHT).extracting(Quantity::name).containsOnlyOnceElementsOf(examples);
        assertThat(examples).hasSameSizeAs(OF_FLIGHT);
        assertThat(Formulary.list()).containsAll(OF_FLIGHT);
    }

    /// Formulas of the bank call these by name and position.
    @ParameterizedTest(name = "{0}({1}) is {2}")
    @CsvSource({
        "glide_ratio, SPEED SPEED, NUMBER",
        "glide_angle, NUMBER, ANGLE",
        "ground_speed, SPEED SPEED, SPEED",
        "descent_rate, SPEED SPEED, SPEED",
        "glide_distance, LENGTH SPEED SPEED, LENGTH",
        "glide_time, LENGTH SPEED, TIME",
        "height_needed, LENGTH SPEED SPEED LENGTH, LENGTH",
        "wing_loading, MASS AREA, LOADING",
        "speed_at_mass, SPEED MASS MASS, SPEED",
        "speed_in_air, SPEED DENSITY DENSITY, SPEED",
        "load_factor, ANGLE, NUMBER",
        "stall_speed, SPEED NUMBER, SPEED",
        "reserve_sink_rate, MASS AREA NUMBER DENSITY, SPEED",
        "equal_jump_height, SPEED, LENGTH",
        "impact_energy, MASS SPEED, ENERGY"
    })
    void theFunctionsOfTheBankKeepTheirNamesAndDimensions(
            String function, String parameters, String result) throws Exception {
        var quantity = Formulary.find(function.replace('_', '-')).orElseThrow();
        assertThat(quantity.functionName()).isEqualTo(function);
        assertThat(quantity.unit().dimension()).isEqualTo(dimension(result));
        var expected = Stream.of(parameters.split(" ")).map(FlightQuantitiesTest::dimension);
        assertThat(quantity.inputs())
                .extracting(input -> input.unit().dimension())
                .containsExactlyElementsOf(expected.toList());
    }

    private static double[] inSi(Quantity quantity, String... values) {
        assertThat(values).hasSameSizeAs(quantity.inputs());
        double[] si = new double[values.length];
        for (int i = 0; i < si.length; i++) {
            si[i] = quantity.inputs().get(i).unit().toSi(Double.parseDouble(values[i]));
        }
        return si;
    }

    private static Dimension dimension(String constant) {
        try {
            return (Dimension) Dimension.class.getField(constant).get(Dimension.class);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError("no dimension " + constant, e);
        }
    }
}
