package org.groundline.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.Set;
import java.util.regex.Pattern;

class GlidePathTest {
    /// Two decimals in the file, over lengths of 60 and more.
    private static final double PRINTED = 3e-4;

    @ParameterizedTest(name = "{0} m high, {1} m far, {2} m left")
    @CsvSource({"600, 5278, 0", "613, 3000, 150", "600, 360, 0", "2000, 18000, 300", "80, 90, 10"})
    void theSlopeIsThatOfTheGlideTimesTheStatedEnlargement(
            double height, double distance, double reserve) {
        var solution =
                Solution.of(
                        "glide-path",
                        "height=" + height + " m",
                        "distance=" + distance + " m",
                        "reserve=" + reserve + " m");

        var path = solution.drawn().span("path");

        double slope = path.way().y() / path.way().x();
        double enlarged = enlargement(solution.drawing(Purpose.SOLUTION, Set.of()));
        assertThat(slope / enlarged)
                .isCloseTo((height - reserve) / distance, within(slope * PRINTED));
    }

    @Test
    void heightDistanceAndReserveAreMeasuredAtThePath() {
        var svg =
                Solution.of("glide-path", "height=613 m", "distance=3000 m", "reserve=150 m")
                        .drawn();
        var path = svg.span("path");

        assertThat(svg.span("height").to()).isEqualTo(path.from());
        assertThat(svg.span("reserve").to()).isEqualTo(path.to());
        assertThat(svg.span("distance").length()).isCloseTo(path.way().x(), within(0.02));
        assertThat(svg.span("reserve").length() / svg.span("height").length())
                .isCloseTo(150.0 / 613, within(0.001));
    }

    @Test
    void windAndAirspeedAreArrowsOfOneScaleAndAHeadwindPointsBack() {
        var svg =
                Solution.of(
                                "glide-path",
                                "height=600 m",
                                "distance=3194 m",
                                "headwind=15 km/h",
                                "airspeed=38 km/h")
                        .drawn();

        assertThat(svg.arrow("headwind").length() / svg.arrow("airspeed").length())
                .isCloseTo(15.0 / 38, within(0.001));
        assertThat(svg.arrow("airspeed").way().x()).isPositive();
        assertThat(svg.arrow("headwind").way().x()).isNegative();
    }

    @Test
    void aTailwindIsNamedWithoutASignAndPointsAhead() {
        var svg =
                Solution.of("glide-path", "height=600 m", "distance=7361 m", "headwind=-15 km/h")
                        .drawn();

        assertThat(svg.texts()).contains("tailwind 15\u202Fkm/h");
        assertThat(svg.arrow("headwind").way().x()).isPositive();
    }

    @Test
    void thePathInStillAirReachesItsOwnDistance() {
        var svg =
                Solution.of(
                                "glide-path",
                                "height=600 m",
                                "distance=3194 m",
                                "still-air-distance=5278 m")
                        .drawn();

        assertThat(svg.span("still-air-distance").way().x() / svg.span("path").way().x())
                .isCloseTo(5278.0 / 3194, within(0.001));
    }

    @Test
    void aStemThatAsksForTheWindShowsNoDirectionOfIt() {
        var svg =
                Solution.of(
                                "glide-path",
                                "height=600 m",
                                "distance=3194 m",
                                "headwind=15 km/h",
                                "still-air-distance=5278 m")
                        .stemAsking("headwind");

        assertThat(svg.part("headwind")).isEmpty();
        assertThat(svg.part("still-air-distance")).isEmpty();
        assertThat(svg.texts()).contains("wind ?").noneMatch(text -> text.contains("headwind"));
    }

    @Test
    void aReserveAsHighAsTheStartIsRefused() {
        var solution = Solution.of("glide-path", "height=150 m", "distance=900 m", "reserve=150 m");

        assertThatThrownBy(solution::drawn)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("height");
    }

    private static double enlargement(Drawing drawing) {
        var stated = Pattern.compile("Heights drawn (\\d+) times").matcher(drawing.description());
        return stated.find() ? Double.parseDouble(stated.group(1)) : 1;
    }
}
