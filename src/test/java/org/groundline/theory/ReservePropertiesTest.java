package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ReservePropertiesTest {
    @Test
    void underTheReserveDragEqualsWeight() {
        double sinkRate = Reserve.sinkRate(100, 33, 1.6, 1.1);
        double drag = 1.1 * sinkRate * sinkRate / 2 * 33 * 1.6;
        assertThat(drag).isCloseTo(100 * StandardAtmosphere.GRAVITY, within(1e-9));
    }

    @Test
    void theEnergyOfTheLandingIsThatOfTheEqualJump() {
        double height = Reserve.equalJumpHeight(5.5);
        assertThat(120 * StandardAtmosphere.GRAVITY * height)
                .isCloseTo(Reserve.impactEnergy(120, 5.5), within(1e-9));
    }

    @Test
    void theAreaNeededSinksAsFastAsAskedFor() {
        double area = Reserve.areaNeeded(110, 5.5, 1.6, 1.1);
        assertThat(Reserve.sinkRate(110, area, 1.6, 1.1)).isCloseTo(5.5, within(1e-12));
    }

    @Test
    void theDragCoefficientOfADescentGivesTheDescentBack() {
        double coefficient = Reserve.dragCoefficient(100, 5.2, 33, 1.1);
        assertThat(Reserve.sinkRate(100, 33, coefficient, 1.1)).isCloseTo(5.2, within(1e-12));
    }

    @Test
    void fallingFromTheEqualJumpHeightLandsAsFast() {
        assertThat(Reserve.speedAfterFall(Reserve.equalJumpHeight(5.5)))
                .isCloseTo(5.5, within(1e-12));
    }

    @Test
    void theReserveObeysTheSameSquareRootsAsTheWing() {
        double sinkRate = Reserve.sinkRate(100, 33, 1.6, 1.225);
        assertThat(Reserve.sinkRate(120, 33, 1.6, 1.225))
                .isCloseTo(Loading.speedAtMass(sinkRate, 100, 120), within(1e-12));
        assertThat(Reserve.sinkRate(100, 33, 1.6, 1.0))
                .isCloseTo(Loading.speedInAir(sinkRate, 1.225, 1.0), within(1e-12));
    }

    @Test
    void aLossOfHeightInTheOpeningIsSinkTimesItsTime() {
        assertThat(Reserve.heightUsedWithLoss(15, 2, 15 * 4.0))
                .isCloseTo(Reserve.heightUsed(15, 2, 2.5, 1.5), within(1e-12));
    }
}
