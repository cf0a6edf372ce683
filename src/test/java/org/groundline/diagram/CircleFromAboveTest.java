package org.groundline.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CircleFromAboveTest {
    /// At 38 km/h and 30° of bank R = V² / (g tan φ) = 19.7 m and T = 11.7 s, so that a wind of 15
    /// km/h carries the circle 48.8 m; computed by hand.
    @Test
    void theDriftHasTheScaleOfTheRadius() {
        var svg =
                Solution.of(
                                "circle-from-above",
                                "airspeed=38 km/h",
                                "bank=30 °",
                                "wind-speed=15 km/h")
                        .drawn();

        assertThat(svg.texts()).contains("radius 19.7\u202Fm", "drift 48.8\u202Fm");
        assertThat(svg.span("drift").length() / svg.arrow("radius").length())
                .isCloseTo(48.8 / 19.7, within(0.01));
    }

    @Test
    void thePathOverTheGroundIsTheCircleCarriedAlongWithTheTime() {
        var svg =
                Solution.of(
                                "circle-from-above",
                                "airspeed=40 km/h",
                                "bank=25 °",
                                "wind-speed=20 km/h")
                        .drawn();
        var path = svg.points("ground-path");
        var middle = svg.dot("middle");
        double radius = svg.arrow("radius").length();
        double drift = svg.span("drift").length();

        for (int i = 0; i < path.size(); i++) {
            double carried = drift * i / (path.size() - 1);
            assertThat(path.get(i).plus(-carried, 0).distanceTo(middle))
                    .isCloseTo(radius, within(0.03));
        }
        assertThat(path.get(1).x()).as("first against the wind").isLessThan(path.getFirst().x());
    }

    @Test
    void theRadiusReachesFromTheMiddleToTheCircle() {
        var svg = Solution.of("circle-from-above", "airspeed=38 km/h", "bank=30 °").drawn();
        var circle = svg.part("circle").getFirst();

        assertThat(svg.arrow("radius").from()).isEqualTo(svg.dot("middle"));
        assertThat(svg.arrow("radius").length())
                .isCloseTo(DrawnSvg.number(circle, "r"), within(0.02));
        assertThat(svg.part("ground-path")).isEmpty();
    }

    @Test
    void windAndAirspeedAreArrowsOfOneScale() {
        var svg =
                Solution.of(
                                "circle-from-above",
                                "airspeed=38 km/h",
                                "bank=30 °",
                                "wind-speed=15 km/h")
                        .drawn();

        assertThat(svg.arrow("wind-speed").length() / svg.arrow("airspeed").length())
                .isCloseTo(15.0 / 38, within(0.001));
    }
}
