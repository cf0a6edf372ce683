package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ForcesPropertiesTest {
    @Test
    void liftAndDragOfAGlideTogetherCarryTheWeight() {
        for (double ratio = 1; ratio < 20; ratio++) {
            double lift = Forces.liftInGlide(100, ratio);
            double drag = Forces.dragInGlide(100, ratio);
            assertThat(Math.hypot(lift, drag)).isCloseTo(Forces.weight(100), within(1e-9));
            assertThat(Forces.ratio(lift, drag)).isCloseTo(ratio, within(1e-9));
            assertThat(lift).isLessThan(Forces.weight(100));
        }
    }

    @Test
    void aForceGivesItsCoefficientBack() {
        double lift = Forces.force(0.57, 25, 10.5, 1.1);
        assertThat(Forces.coefficient(lift, 25, 10.5, 1.1)).isCloseTo(0.57, within(1e-12));
    }

    @Test
    void twiceTheSpeedIsFourTimesTheForceAndTwiceTheAreaTwice() {
        double force = Forces.force(0.57, 25, 10, 1.1);
        assertThat(Forces.force(0.57, 25, 20, 1.1)).isCloseTo(4 * force, within(1e-9));
        assertThat(Forces.force(0.57, 50, 10, 1.1)).isCloseTo(2 * force, within(1e-9));
    }

    @Test
    void aHeavierWingHasItsOldLiftCoefficientAtTheSpeedOfTheSquareRootLaw() {
        double speed = Loading.speedAtMass(10.5, 90, 105);
        double old = Forces.coefficient(Forces.liftInGlide(90, 9), 25, 10.5, 1.2);
        assertThat(Forces.coefficient(Forces.liftInGlide(105, 9), 25, speed, 1.2))
                .isCloseTo(old, within(1e-12));
    }

    @Test
    void attitudeAndAngleOfAttackAreInverse() {
        double attitude = Forces.attitude(0.16, 0.12);
        assertThat(Forces.angleOfAttack(attitude, 0.12)).isCloseTo(0.16, within(1e-12));
    }

    @Test
    void fasterAirHasLowerPressureAndTheWayBackRestoresIt() {
        double lower = Forces.pressureAtSpeed(101_325, 1.225, 10, 15);
        assertThat(lower).isLessThan(101_325);
        assertThat(Forces.pressureAtSpeed(lower, 1.225, 15, 10)).isCloseTo(101_325, within(1e-9));
    }

    @Test
    void theLinesCarryTheWeightOnceInSteadyFlight() {
        assertThat(Lines.load(95, 1)).isEqualTo(Forces.weight(95));
    }

    @Test
    void lightWingsHaveTheLeastStrengthOfLines() {
        assertThat(Lines.strengthRequired(60)).isEqualTo(14_000);
        assertThat(Lines.strengthRequired(101)).isEqualTo(14_000);
        assertThat(Lines.strengthRequired(102)).isGreaterThan(14_000);
    }
}
