package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TurnPropertiesTest {
    @Test
    void flyingStraightTheWingCarriesItsWeightOnce() {
        assertThat(Turn.loadFactor(0)).isEqualTo(1);
        assertThat(Turn.stallSpeed(7, 1)).isEqualTo(7);
    }

    @Test
    void bankAndLoadFactorAreInverse() {
        for (double bank = 0.05; bank < 1.5; bank += 0.05) {
            assertThat(Turn.bankAtLoadFactor(Turn.loadFactor(bank))).isCloseTo(bank, within(1e-9));
        }
    }

    @Test
    void atTheHighestLoadFactorTheAirspeedIsTheStallSpeed() {
        double loadFactor = Turn.highestLoadFactor(12, 6.5);
        assertThat(Turn.stallSpeed(6.5, loadFactor)).isCloseTo(12, within(1e-12));
    }

    @Test
    void theCircleIsFlownInItsTime() {
        double way = 2 * Math.PI * Turn.radius(10.5, 0.5);
        assertThat(Turn.time(10.5, 0.5)).isCloseTo(way / 10.5, within(1e-9));
    }

    @Test
    void theBankForARadiusFliesIt() {
        assertThat(Turn.bankForRadius(10.5, Turn.radius(10.5, 0.5))).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void theLoadInACircleIsWeightAndInwardPullTogether() {
        // Pythagoras in place of the cosine: n² = 1 + (V² / (R g))².
        double radius = Turn.radius(10.5, 0.7);
        double inwards = 10.5 * 10.5 / (radius * StandardAtmosphere.GRAVITY);
        assertThat(Turn.loadFactor(0.7)).isCloseTo(Math.hypot(1, inwards), within(1e-12));
        assertThat(Turn.spiralLoadFactor(10.5, radius))
                .isCloseTo(Turn.loadFactor(0.7), within(1e-12));
    }

    @Test
    void steeperMeansTighterQuickerAndMoreLoaded() {
        for (double bank = 0.1; bank < 1.4; bank += 0.1) {
            assertThat(Turn.radius(10, bank + 0.1)).isLessThan(Turn.radius(10, bank));
            assertThat(Turn.rate(10, bank + 0.1)).isGreaterThan(Turn.rate(10, bank));
            assertThat(Turn.stallSpeedAtBank(6, bank + 0.1))
                    .isGreaterThan(Turn.stallSpeedAtBank(6, bank));
        }
    }

    @Test
    void atTheSameAngleOfAttackTheCircleHasAClosedForm() {
        // R = V² / (g sin φ), T = 2 π V / (g tan φ √cos φ), height 2 π V w / (g sin φ cos φ).
        double g = StandardAtmosphere.GRAVITY;
        for (double bank = 0.1; bank < 1.5; bank += 0.1) {
            double sin = Math.sin(bank);
            double cos = Math.cos(bank);
            double radius = 100 / (g * sin);
            assertThat(SameAngleTurn.radius(10, bank)).isCloseTo(radius, within(1e-9 * radius));
            double time = 2 * Math.PI * 10 / (g * sin / cos * Math.sqrt(cos));
            assertThat(SameAngleTurn.time(10, bank)).isCloseTo(time, within(1e-9 * time));
            double height = 2 * Math.PI * 10 * 1.1 / (g * sin * cos);
            assertThat(SameAngleTurn.heightPerTurn(10, 1.1, bank))
                    .isCloseTo(height, within(1e-9 * height));
        }
    }

    @Test
    void aFullCircleCostsLeastHeightAtFortyFiveDegrees() {
        double least = SameAngleTurn.heightPerTurn(10, 1.1, Math.PI / 4);
        for (double bank = 0.1; bank < 1.5; bank += 0.1) {
            assertThat(SameAngleTurn.heightPerTurn(10, 1.1, bank)).isGreaterThan(least);
        }
    }

    @Test
    void inStraightFlightTheSameAngleChangesNothing() {
        assertThat(SameAngleTurn.airspeed(10, 0)).isEqualTo(10);
        assertThat(SameAngleTurn.sinkRate(1.1, 0)).isEqualTo(1.1);
    }
}
