package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.json.JsonMapper;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/// Every row of theory/check-values.csv, computed by the room that claims its quantity. The
/// provenance of a row is *verified* where the number was seen in the named source, *derived* where
/// it was computed by hand from the formula, *memory* or *common-practice* where nothing stands
/// behind it; its tolerance comes from the printed digits, or from a source that rounds more
/// coarsely and says so.
class CheckValuesTest {
    private static final List<Room> ROOMS =
            List.of(
                    AirValues.ROOM,
                    AltitudeValues.ROOM,
                    WindValues.ROOM,
                    WeatherValues.ROOM,
                    HumanValues.ROOM,
                    SunValues.ROOM,
                    GlideValues.ROOM,
                    LoadingValues.ROOM,
                    TurnValues.ROOM,
                    ReserveValues.ROOM,
                    PolarValues.ROOM,
                    ForceValues.ROOM);

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
        assertThat(provenance).isIn("verified", "derived", "memory", "common-practice");
        assertThat(source).isNotBlank();
        var given = new Given(JsonMapper.builder().build().readTree(inputs));
        assertThat(onlyRoomOf(quantity).compute(quantity, given))
                .as("%s (%s)", id, unit)
                .isCloseTo(expected, within(Math.max(tolerance, lastBits(expected))));
    }

    /// A row without tolerance is exact but for the last bits of a conversion.
    private static double lastBits(double expected) {
        return 4 * Math.ulp(expected);
    }

    @Test
    void noRoomClaimsAQuantityWithoutARow() throws Exception {
        var written =
                Files.readAllLines(Path.of("src/test/resources/theory/check-values.csv")).stream()
                        .map(row -> row.split(",", 3)[1])
                        .collect(Collectors.toSet());
        for (Room room : ROOMS) {
            assertThat(written).as(room.name()).containsAll(room.quantities().keySet());
        }
    }

    private static Room onlyRoomOf(String quantity) {
        var claiming = ROOMS.stream().filter(r -> r.quantities().containsKey(quantity)).toList();
        assertThat(claiming).as("rooms that compute " + quantity).hasSize(1);
        return claiming.getFirst();
    }
}
