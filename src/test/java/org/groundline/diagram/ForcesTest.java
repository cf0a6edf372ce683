package org.groundline.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// The arrows of forces, in a glide and in a turn.
class ForcesTest {
    private static final double PRINTED = 0.03;

    /// Lift over drag is the glide ratio: NASA Glenn Research Center, "Vector Balance of Forces for
    /// a Glider".
    @ParameterizedTest(name = "glide ratio {0}")
    @ValueSource(doubles = {2, 8, 14})
    void inAGlideLiftAndDragHaveTheRatioOfTheGlide(double ratio) {
        var svg = glide(ratio).drawn();
        var lift = svg.arrow("lift");
        var drag = svg.arrow("drag");

        assertThat(lift.length()).isCloseTo(ratio * drag.length(), within(ratio * PRINTED));
        assertThat(dot(lift.way(), drag.way())).isCloseTo(0, within(lift.length() * PRINTED));
        assertThat(lift.length()).isLessThan(svg.arrow("weight").length());
    }

    @ParameterizedTest(name = "glide ratio {0}")
    @ValueSource(doubles = {2, 8, 14})
    void inAGlideLiftAndDragTogetherHoldTheWeight(double ratio) {
        var svg = glide(ratio).drawn();
        var sum = svg.arrow("lift").way().plus(svg.arrow("drag").way(), 1);

        assertThat(sum.plus(svg.arrow("weight").way(), 1).length()).isLessThan(PRINTED);
        assertThat(sum.minus(svg.arrow("total-force").way()).length()).isLessThan(PRINTED);
    }

    @Test
    void dragPointsBackAlongTheFlightPath() {
        var svg = glide(8).drawn();
        var path = svg.span("path").way();

        assertThat(path.y() / path.x()).isCloseTo(1 / 8.0, within(0.001));
        assertThat(svg.arrow("drag").way().unit().plus(path.unit(), 1).length()).isLessThan(0.01);
    }

    /// At 60° of bank the load is doubled: FAA-H-8083-13B, *Glider Flying Handbook*, 2024, page
    /// 3-12.
    @Test
    void at60DegreesOfBankTheLiftIsTwiceAsLongAsTheWeight() {
        var svg = turn(60).drawn();

        assertThat(svg.arrow("lift").length())
                .isCloseTo(2 * svg.arrow("weight").length(), within(PRINTED));
        assertThat(svg.texts()).contains("load factor 2");
    }

    @ParameterizedTest(name = "bank {0}°")
    @ValueSource(doubles = {5, 30, 45, 75})
    void inATurnTheLiftLeansWithTheBankAndItsUpwardPartHoldsTheWeight(double bank) {
        var svg = turn(bank).drawn();
        var lift = svg.arrow("lift");
        var upward = svg.arrow("vertical-lift");
        var inward = svg.arrow("horizontal-lift");

        assertThat(Math.toDegrees(Math.atan2(lift.way().x(), -lift.way().y())))
                .isCloseTo(bank, within(0.1));
        assertThat(upward.way().plus(svg.arrow("weight").way(), 1).length()).isLessThan(PRINTED);
        assertThat(upward.way().plus(inward.way(), 1).minus(lift.way()).length())
                .isLessThan(PRINTED);
    }

    @Test
    void aStemLeansTheLiftByAnyAngleButTheAskedOne() {
        var asked = turn(17).stemAsking("bank").arrow("lift").way();
        var other = turn(52).stemAsking("bank").arrow("lift").way();

        assertThat(asked).isEqualTo(other);
    }

    private static double dot(Point one, Point other) {
        return one.x() * other.x() + one.y() * other.y();
    }

    private static Solution glide(double ratio) {
        return Solution.of("forces-in-glide", "mass=100 kg", "glide-ratio=" + ratio);
    }

    private static Solution turn(double bank) {
        return Solution.of("forces-in-turn", "mass=100 kg", "bank=" + bank + " °");
    }
}
