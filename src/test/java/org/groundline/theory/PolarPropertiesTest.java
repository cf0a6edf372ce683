package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;

/// The parabola, on two invented polars: a paraglider's and a hang glider's.
class PolarPropertiesTest {
    private static final Polar PARAGLIDER = new Polar(0.035, -0.63, 3.93);
    private static final Polar POLAR_OF_105_KG = PARAGLIDER.atMass(90, 105);
    private static final double WIND = 20 / 3.6;
    private static final Polar HANG_GLIDER = new Polar(0.0125, -0.25, 2.05);

    @Test
    void nothingSinksLessThanAtTheSpeedOfMinimumSink() {
        for (Polar polar : List.of(PARAGLIDER, HANG_GLIDER)) {
            double speed = polar.minimumSinkSpeed();
            assertThat(polar.sinkRate(speed)).isCloseTo(polar.minimumSink(), within(1e-12));
            for (double faster = speed + 0.5; faster < 25; faster += 0.5) {
                assertThat(polar.sinkRate(faster)).isGreaterThan(polar.minimumSink());
            }
        }
    }

    @Test
    void theBestGlideRatioIsThatAtTheSpeedOfBestGlide() {
        for (Polar polar : List.of(PARAGLIDER, HANG_GLIDER)) {
            double speed = polar.bestGlideSpeed();
            assertThat(polar.bestGlideRatio())
                    .isCloseTo(Glide.ratio(speed, polar.sinkRate(speed)), within(1e-9));
        }
    }

    @Test
    void inStillAirTheSpeedToFlyIsThatOfBestGlide() {
        assertThat(PARAGLIDER.speedToFly(0, 0)).isCloseTo(10.596, within(0.0005));
        assertThat(PARAGLIDER.speedToFly(0, 0))
                .isCloseTo(PARAGLIDER.bestGlideSpeed(), within(1e-12));
        assertThat(PARAGLIDER.bestRatioOverGround(0, 0))
                .isCloseTo(PARAGLIDER.bestGlideRatio(), within(1e-9));
    }

    /// Brute force over all speeds in steps of 1 cm/s, as an oracle that knows no tangent.
    @ParameterizedTest(name = "headwind {0} m/s, air sinking {1} m/s")
    @CsvSource({"0, 0", "5, 0", "-5, 0", "0, 2", "7, 1.5", "-12, 0.5", "3, -0.7", "11, 0"})
    void noOtherSpeedGlidesFurtherThanTheSpeedToFly(double headwind, double airSink) {
        for (Polar polar : List.of(PARAGLIDER, HANG_GLIDER)) {
            double furthest = 0;
            double best = 0;
            for (double v = polar.minimumSinkSpeed(); v < 60; v += 0.01) {
                double ratio = (v - headwind) / (polar.sinkRate(v) + airSink);
                if (ratio > furthest) {
                    furthest = ratio;
                    best = v;
                }
            }
            assertThat(polar.speedToFly(headwind, airSink)).isCloseTo(best, within(0.011));
            assertThat(polar.bestRatioOverGround(headwind, airSink)).isGreaterThan(furthest - 1e-9);
        }
    }

    /// The same for the average of climb and glide.
    @Test
    void noOtherSpeedGoesFurtherAcrossCountryThanTheOneBetweenThermals() {
        for (double climb = 0.5; climb <= 4; climb += 0.5) {
            double fastest = HANG_GLIDER.crossCountrySpeed(climb);
            for (double v = HANG_GLIDER.minimumSinkSpeed(); v < 40; v += 0.1) {
                assertThat(Soaring.crossCountrySpeed(v, HANG_GLIDER.sinkRate(v), climb))
                        .isLessThan(fastest + 1e-9);
            }
        }
    }

    @Test
    void theSpeedToFlyIsTheTextbookRoot() {
        // V = W + √(W² + (c + s + b W) / a), as it is usually printed.
        double root = 5 + Math.sqrt(25 + (3.93 + 1.5 - 0.63 * 5) / 0.035);
        assertThat(PARAGLIDER.speedToFly(5, 1.5)).isCloseTo(root, within(1e-9));
    }

    @Test
    void headwindAndSinkAskForSpeedAndATailwindForNoLessThanMinimumSink() {
        for (double wind = -30; wind < 15; wind++) {
            assertThat(PARAGLIDER.speedToFly(wind + 1, 0))
                    .isGreaterThan(PARAGLIDER.speedToFly(wind, 0));
            assertThat(PARAGLIDER.speedToFly(wind, 0)).isGreaterThan(PARAGLIDER.minimumSinkSpeed());
            assertThat(PARAGLIDER.speedToFly(wind, 1))
                    .isGreaterThan(PARAGLIDER.speedToFly(wind, 0));
        }
    }

    @Test
    void aWingIsFlownNoFasterThanItCan() {
        assertThat(PARAGLIDER.speedToFlyUpTo(12, 5.6, 0)).isEqualTo(12);
        assertThat(PARAGLIDER.speedToFlyUpTo(14, 5.6, 0)).isEqualTo(PARAGLIDER.speedToFly(5.6, 0));
        assertThat(PARAGLIDER.speedBetweenThermalsUpTo(12, 3, 0)).isEqualTo(12);
        assertThat(PARAGLIDER.speedBetweenThermalsUpTo(12, 0.5, 0))
                .isEqualTo(PARAGLIDER.speedBetweenThermals(0.5, 0));
    }

    @Test
    void anExpectedClimbAsksForTheSpeedThatSinkingAirAsksFor() {
        assertThat(PARAGLIDER.speedBetweenThermals(1.5, 0))
                .isEqualTo(PARAGLIDER.speedToFly(0, 1.5));
    }

    @Test
    void onAParagliderTheHalfHeadwindRuleAsksForTooMuch() {
        // 20 km/h of headwind: 5.5 km/h by the polar, 10 km/h by the rule.
        double byPolar = PARAGLIDER.speedToFly(WIND, 0) - PARAGLIDER.bestGlideSpeed();
        assertThat(byPolar * 3.6).isCloseTo(5.5, within(0.05));
        assertThat(Glide.speedByHalfHeadwindRule(PARAGLIDER.bestGlideSpeed(), WIND))
                .isGreaterThan(PARAGLIDER.speedToFly(WIND, 0) + 1);
    }

    @Test
    void aHeavierPilotHasTheSameBestGlideAndIntoWindABetterOne() {
        // 90 to 105 kg into 20 km/h: 8 % further, each at the speed of best glide in still air; 6 %
        // where each flies the speed for that wind.
        var heavier = POLAR_OF_105_KG;
        assertThat(heavier.bestGlideRatio()).isCloseTo(PARAGLIDER.bestGlideRatio(), within(1e-9));
        assertThat(ratioAtBestGlideSpeed(heavier) / ratioAtBestGlideSpeed(PARAGLIDER))
                .isCloseTo(1.08, within(0.005));
        double gain =
                heavier.bestRatioOverGround(WIND, 0) / PARAGLIDER.bestRatioOverGround(WIND, 0);
        assertThat(gain).isCloseTo(1.06, within(0.005));
    }

    @Test
    void atAnotherMassAllSpeedsOfAPolarGrowAlike() {
        assertThat(POLAR_OF_105_KG.minimumSink())
                .isCloseTo(Loading.speedAtMass(PARAGLIDER.minimumSink(), 90, 105), within(1e-12));
        assertThat(POLAR_OF_105_KG.minimumSinkSpeed())
                .isCloseTo(
                        Loading.speedAtMass(PARAGLIDER.minimumSinkSpeed(), 90, 105), within(1e-12));
    }

    @Test
    void inATurnAtTheSameAngleOfAttackThePolarAgreesWithTheLoadFactor() {
        double straight = PARAGLIDER.sinkRate(10.5);
        double airspeed = SameAngleTurn.airspeed(10.5, 0.6);
        assertThat(PARAGLIDER.sinkRateInTurn(airspeed, 0.6))
                .isCloseTo(SameAngleTurn.sinkRate(straight, 0.6), within(1e-12));
        assertThat(PARAGLIDER.sinkRateInTurn(10.5, 0)).isEqualTo(straight);
    }

    private static double ratioAtBestGlideSpeed(Polar polar) {
        double speed = polar.bestGlideSpeed();
        return Glide.ratioOverGround(speed, WIND, polar.sinkRate(speed), 0);
    }
}
