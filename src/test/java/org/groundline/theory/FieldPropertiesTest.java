package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FieldPropertiesTest {
    @Test
    void withoutWindTheCircuitIsOneGlideOfItsLength() {
        double height = new Circuit(150, 80, 100).heightUsed(10.5, 0, 1.2);
        assertThat(height).isCloseTo(Glide.heightNeeded(330, 10.5, 1.2, 0), within(1e-9));
    }

    @Test
    void outAndBackInWindCostsMoreThanInStillAir() {
        var outAndBack = new Circuit(150, 0, 150);
        for (double wind = 1; wind < 10; wind++) {
            assertThat(outAndBack.heightUsed(10.5, wind, 1.2))
                    .isGreaterThan(outAndBack.heightUsed(10.5, wind - 1, 1.2));
        }
    }

    @Test
    void theWrongDirectionCostsEnergyAndWithoutWindThereIsNone() {
        assertThat(Circuit.downwindEnergyRatio(10.5, 0)).isEqualTo(1);
        double with = Reserve.impactEnergy(90, Glide.groundSpeed(10.5, -4));
        double against = Reserve.impactEnergy(90, Glide.groundSpeed(10.5, 4));
        assertThat(Circuit.downwindEnergyRatio(10.5, 4)).isCloseTo(with / against, within(1e-9));
    }

    @Test
    void theRunIsFasterInThinAirAndSlowerIntoWind() {
        assertThat(Launch.runSpeed(7, 1.225, 0)).isCloseTo(7, within(1e-12));
        assertThat(Launch.runSpeed(7, 1.0, 0)).isGreaterThan(7);
        assertThat(Launch.runSpeed(7, 1.225, 3)).isCloseTo(4, within(1e-12));
    }

    @Test
    void aSlackOrLevelTowLineLoadsNothing() {
        assertThat(Launch.towLoadFactor(90, 0, 1)).isEqualTo(1);
        assertThat(Launch.towLoadFactor(90, 800, 0)).isEqualTo(1);
    }

    @Test
    void aLineStraightDownWithThePullOfTheWeightDoublesTheLoad() {
        assertThat(Launch.towLoadFactor(90, Forces.weight(90), Math.PI / 2))
                .isCloseTo(2, within(1e-12));
    }

    @Test
    void liftStrongerThanTheSinkLeavesOneClimbing() {
        assertThat(Soaring.netSink(3.5, 4)).isEqualTo(-0.5);
        assertThat(Soaring.netSink(3.5, 0)).isEqualTo(3.5);
    }

    @Test
    void theDriftIsWindTimesTheTimeOfTheClimb() {
        assertThat(Soaring.drift(600, 1.5, 4)).isCloseTo(4 * 600 / 1.5, within(1e-9));
        assertThat(Soaring.drift(600, 1.5, 0)).isZero();
    }

    @Test
    void inStrongWindTheWayBackTakesMoreThanTheClimbGave() {
        // 600 m gained at 1.5 m/s: back against 15 km/h takes 313 m, against 25 km/h 923 m.
        assertThat(heightToReturn(15)).isCloseTo(313, within(0.5));
        assertThat(heightToReturn(25)).isCloseTo(923, within(0.5)).isGreaterThan(600);
    }

    @Test
    void howeverWeakTheGlideTheAverageStaysBelowTheAirspeed() {
        assertThat(Soaring.crossCountrySpeed(12, 1.5, 1e9)).isCloseTo(12, within(1e-6));
        assertThat(Soaring.crossCountrySpeed(12, 1.5, 1.5)).isCloseTo(6, within(1e-12));
    }

    private static double heightToReturn(double windKmh) {
        double wind = windKmh / 3.6;
        double groundSpeed = Glide.groundSpeed(38 / 3.6, wind);
        return Glide.heightNeeded(Soaring.drift(600, 1.5, wind), groundSpeed, 1.2, 0);
    }
}
