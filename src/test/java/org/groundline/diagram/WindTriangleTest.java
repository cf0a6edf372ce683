package org.groundline.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindTriangleTest {
    private static final double PRINTED = 0.03;

    @ParameterizedTest(name = "course {0}, airspeed {1}, wind {2}/{3}")
    @CsvSource({"90, 38, 360, 15", "270, 38, 230, 20", "45, 38, 255, 10", "10, 60, 120, 40"})
    void throughTheAirAndThenWithTheWindLeadsWhereTheGroundArrowLeads(
            double course, double airspeed, double windFrom, double windSpeed) {
        var svg = triangle(course, airspeed, windFrom, windSpeed).drawn();
        var air = svg.arrow("airspeed");
        var wind = svg.arrow("wind-speed");
        var ground = svg.arrow("ground-speed");

        assertThat(air.from()).isEqualTo(ground.from());
        assertThat(air.to()).isEqualTo(wind.from());
        assertThat(wind.to()).isEqualTo(ground.to());
        assertThat(compass(ground)).isCloseTo(course, within(0.1));
        assertThat(compass(wind)).isCloseTo((windFrom + 180) % 360, within(0.1));
        assertThat(wind.length() / air.length()).isCloseTo(windSpeed / airspeed, within(0.001));
        assertThat(air.length() / airspeed).isCloseTo(bar(svg) / 10, within(PRINTED / airspeed));
    }

    /// Derived here from the law of sines: sin 23.2° = 15/38, and 38 cos 23.2° = 34.9.
    @Test
    void withTheWindFromTheLeftTheNosePointsLeftOfTheCourse() {
        var svg = triangle(90, 38, 360, 15).drawn();

        assertThat(compass(svg.arrow("airspeed"))).isCloseTo(66.8, within(0.1));
        assertThat(svg.arrow("ground-speed").length() / svg.arrow("airspeed").length())
                .isCloseTo(34.9 / 38, within(0.002));
        assertThat(svg.texts())
                .contains("heading 66.8°", "crab angle 23.2°", "ground speed 34.9\u202Fkm/h");
    }

    @Test
    void arrowsInOneLineStandBesideEachOtherEachAsLongAsItIs() {
        var svg = triangle(45, 38, 45, 20).drawn();
        var air = svg.arrow("airspeed");
        var wind = svg.arrow("wind-speed");
        var ground = svg.arrow("ground-speed");

        assertThat(ground.length()).isCloseTo(air.length() - wind.length(), within(PRINTED));
        assertThat(air.from().distanceTo(ground.from())).isGreaterThan(10);
        assertThat(air.to().distanceTo(wind.from())).isGreaterThan(5);
    }

    @Test
    void aStemShowsTheDirectionsThatAreToldAndNoTriangle() {
        var svg = triangle(90, 38, 360, 15).stemAsking("heading");

        assertThat(compass(svg.arrow("course"))).isCloseTo(90, within(0.1));
        assertThat(compass(svg.arrow("wind-speed"))).isCloseTo(180, within(0.1));
        assertThat(svg.part("airspeed")).isEmpty();
        assertThat(svg.part("heading")).isEmpty();
        assertThat(svg.texts()).contains("heading ?", "airspeed 38\u202Fkm/h");
    }

    private static Solution triangle(
            double course, double airspeed, double windFrom, double windSpeed) {
        return Solution.of(
                "wind-triangle",
                "course=" + course + " °",
                "airspeed=" + airspeed + " km/h",
                "wind-from=" + windFrom + " °",
                "wind-speed=" + windSpeed + " km/h");
    }

    /// The bar that shows 10 km/h.
    private static double bar(DrawnSvg svg) {
        return svg.span("scale").length();
    }

    /// Where an arrow points, clockwise from north.
    private static double compass(DrawnSvg.Arrow arrow) {
        double angle = Math.toDegrees(Math.atan2(arrow.way().x(), -arrow.way().y()));
        return (angle + 360) % 360;
    }
}
