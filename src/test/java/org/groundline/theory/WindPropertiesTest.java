package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/// What always holds for the wind.
class WindPropertiesTest {
    private static final double KNOT = 1852.0 / 3600;

    @Test
    void theTwoPartsOfAWindMakeUpTheWind() {
        for (double angle = -3; angle <= 3; angle += 0.25) {
            double headwind = Wind.headwind(8, angle);
            double crosswind = Wind.crosswind(8, angle);
            assertThat(Math.hypot(headwind, crosswind)).isCloseTo(8, within(1e-12));
        }
    }

    @Test
    void aWindGivesBackItsSpeedAndWhereItComesFrom() {
        for (double from = 0; from < 6.28; from += 0.2) {
            double eastward = Wind.eastward(7, from);
            double northward = Wind.northward(7, from);
            assertThat(Wind.speed(eastward, northward)).isCloseTo(7, within(1e-12));
            assertThat(Wind.from(eastward, northward)).isCloseTo(from, within(1e-12));
        }
    }

    @Test
    void aWestWindCarriesToTheEastAndANorthWindToTheSouth() {
        assertThat(Wind.eastward(5, Math.toRadians(270))).isCloseTo(5, within(1e-12));
        assertThat(Wind.northward(5, 0)).isCloseTo(-5, within(1e-12));
    }

    @Test
    void theAngleBetweenWindAndCourseIsTakenTheShortWayRound() {
        assertThat(Math.toDegrees(Wind.angle(Math.toRadians(350), Math.toRadians(20))))
                .isCloseTo(30, within(1e-9));
        assertThat(Math.toDegrees(Wind.angle(Math.toRadians(20), Math.toRadians(350))))
                .isCloseTo(-30, within(1e-9));
    }

    @Test
    void flyingTheHeadingInTheWindGivesTheCourseAndTheGroundSpeed() {
        for (double from = 0; from < 6.28; from += 0.3) {
            double course = 1.1;
            double heading = Wind.heading(11, course, from, 6);
            double east = 11 * Math.sin(heading) + Wind.eastward(6, from);
            double north = 11 * Math.cos(heading) + Wind.northward(6, from);
            assertThat(Math.atan2(east, north)).isCloseTo(course, within(1e-9));
            assertThat(Wind.groundSpeed(11, 6, Wind.angle(course, from)))
                    .isCloseTo(Math.hypot(east, north), within(1e-9));
        }
    }

    @Test
    void aWindStraightAgainstTheCourseNeedsNoCrab() {
        assertThat(Wind.correctionAngle(11, 6, 0)).isZero();
        assertThat(Wind.groundSpeed(11, 6, 0)).isCloseTo(5, within(1e-12));
        assertThat(Wind.groundSpeed(11, 6, 0)).isEqualTo(Glide.groundSpeed(11, 6));
    }

    @Test
    void windFromTheLeftIsTheMirrorOfWindFromTheRight() {
        assertThat(Wind.correctionAngle(11, 6, -0.7)).isEqualTo(-Wind.correctionAngle(11, 6, 0.7));
        assertThat(Wind.groundSpeed(11, 6, -0.7)).isEqualTo(Wind.groundSpeed(11, 6, 0.7));
    }

    @Test
    void aWindJustAbeamCostsGroundSpeed() {
        assertThat(Wind.groundSpeed(11, 6, Math.PI / 2))
                .isCloseTo(Math.sqrt(11 * 11 - 6 * 6), within(1e-9));
    }

    @Test
    void eachForceBeginsWhereTheOneBelowEnds() {
        for (int force = 0; force < 12; force++) {
            assertThat(Beaufort.lowest(force + 1) - Beaufort.highest(force))
                    .isCloseTo(KNOT, within(1e-12));
        }
    }

    @Test
    void eachForceIsFoundFromItsEdgesAndItsMean() {
        for (int force = 0; force <= 12; force++) {
            assertThat(Beaufort.force(Beaufort.lowest(force))).isEqualTo(force);
            assertThat(Beaufort.force(Beaufort.meanSpeed(force))).isEqualTo(force);
        }
        for (int force = 0; force < 12; force++) {
            assertThat(Beaufort.force(Beaufort.highest(force))).isEqualTo(force);
        }
        assertThat(Beaufort.force(100)).isEqualTo(12);
    }

    @Test
    void atTheReferenceHeightTheProfilesGiveTheWindItself() {
        assertThat(WindProfile.logarithmic(6, 10, 10, 0.1)).isCloseTo(6, within(1e-12));
        assertThat(WindProfile.power(6, 10, 10, 0.2)).isEqualTo(6);
    }

    @Test
    void theLogarithmicProfileIsCalmAtTheRoughnessLength() {
        assertThat(WindProfile.logarithmic(6, 10, 0.1, 0.1)).isZero();
    }

    @Test
    void theWindGrowsWithHeightAndItsGrowthSlackens() {
        double before = WindProfile.power(6, 10, 1, 0.2);
        double growth = Double.MAX_VALUE;
        for (double height = 2; height <= 100; height++) {
            double wind = WindProfile.power(6, 10, height, 0.2);
            assertThat(wind - before).isPositive().isLessThan(growth);
            growth = wind - before;
            before = wind;
        }
    }

    @Test
    void withoutAGradientTheMarginIsThatAboveTheStall() {
        assertThat(WindProfile.airspeedMargin(10, 5, 5, 7)).isEqualTo(3);
    }

    @Test
    void twiceTheWindPullsFourTimesAsHard() {
        assertThat(Gust.forceRatio(5, 10)).isEqualTo(4);
        assertThat(Gust.dynamicPressure(10, 1.2))
                .isCloseTo(4 * Gust.dynamicPressure(5, 1.2), within(1e-12));
    }

    @Test
    void equalIndicatedAirspeedMeansEqualDynamicPressureAtEveryAltitude() {
        double atSeaLevel = Gust.dynamicPressure(10, StandardAtmosphere.SEA_LEVEL_DENSITY);
        for (double altitude = 0; altitude < 6_000; altitude += 500) {
            double density = StandardAtmosphere.density(altitude);
            double trueAirspeed = StandardAtmosphere.trueAirspeed(10, altitude);
            assertThat(Gust.dynamicPressure(trueAirspeed, density))
                    .isCloseTo(atSeaLevel, within(1e-9));
        }
    }

    @Test
    void aSteadyWindHasAGustFactorOfOneAndAddsNothing() {
        assertThat(Gust.factor(6, 6)).isEqualTo(1);
        assertThat(Gust.sailplaneAddition(6, 6)).isZero();
    }
}
