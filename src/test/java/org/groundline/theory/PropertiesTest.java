package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PropertiesTest {
    @Test
    void theStandardAirGetsColderAndThinnerWithAltitude() {
        for (double altitude = 0; altitude <= 10_900; altitude += 100) {
            assertThat(StandardAtmosphere.temperature(altitude + 100))
                    .isLessThan(StandardAtmosphere.temperature(altitude));
            assertThat(StandardAtmosphere.density(altitude + 100))
                    .isLessThan(StandardAtmosphere.density(altitude));
        }
    }

    @Test
    void theStandardAirCarriesItsOwnWeight() {
        // Hydrostatics, dp = −ρ g dH, by a difference over two metres.
        for (double altitude = 1; altitude < 11_000; altitude += 500) {
            double slope =
                    StandardAtmosphere.pressure(altitude + 1)
                            - StandardAtmosphere.pressure(altitude - 1);
            double weight = 2 * StandardAtmosphere.density(altitude) * StandardAtmosphere.GRAVITY;
            assertThat(-slope).isCloseTo(weight, within(weight * 1e-6));
        }
    }

    @Test
    void atSeaLevelTrueAndIndicatedAirspeedAreTheSame() {
        assertThat(StandardAtmosphere.trueAirspeed(10, 0)).isCloseTo(10, within(1e-6));
    }

    @Test
    void theHeightNeededForTheReachableDistanceIsTheHeightItself() {
        double distance = Glide.distance(600, 6.4, 1.2);
        assertThat(Glide.heightNeeded(distance, 6.4, 1.2, 0)).isCloseTo(600, within(1e-9));
    }

    @Test
    void theDistanceIsGroundSpeedTimesTime() {
        assertThat(Glide.distance(600, 6.4, 1.2))
                .isCloseTo(6.4 * Glide.time(600, 1.2), within(1e-9));
    }

    @Test
    void theRatioIsTheCotangentOfTheAngle() {
        for (double ratio = 1; ratio < 20; ratio++) {
            assertThat(1 / Math.tan(Glide.angle(ratio))).isCloseTo(ratio, within(1e-9));
        }
    }

    @Test
    void aWingAtFourTimesTheMassFliesTwiceAsFast() {
        assertThat(Loading.speedAtMass(10, 50, 200)).isCloseTo(20, within(1e-12));
    }

    @Test
    void scalingThereAndBackIsTheIdentity() {
        double heavier = Loading.speedAtMass(10.5, 85, 105);
        assertThat(Loading.speedAtMass(heavier, 105, 85)).isCloseTo(10.5, within(1e-12));
    }

    @Test
    void theAllUpMassIsTheSumOfAllThatTakesOff() {
        assertThat(Loading.allUpMass(78, 5.2, 8.5, 3.3)).isCloseTo(95.0, within(1e-9));
    }

    @Test
    void flyingStraightTheWingCarriesItsWeightOnce() {
        assertThat(Turn.loadFactor(0)).isEqualTo(1);
        assertThat(Turn.stallSpeed(7, 1)).isEqualTo(7);
    }

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
}
