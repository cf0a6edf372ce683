package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LoadingPropertiesTest {
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
    void twiceTheLoadingMeansTheSameFromMassAndFromArea() {
        assertThat(Loading.speedAtArea(10, 30, 15))
                .isCloseTo(Loading.speedAtMass(10, 60, 120), within(1e-12));
    }

    @Test
    void theThreeCausesOfSpeedMayBeAppliedInAnyOrder() {
        double massFirst = Loading.speedInAir(Loading.speedAtMass(10, 90, 105), 1.225, 1.0);
        double airFirst = Loading.speedAtMass(Loading.speedInAir(10, 1.225, 1.0), 90, 105);
        assertThat(massFirst).isCloseTo(airFirst, within(1e-12));
    }

    @Test
    void theRuleOfHalfThePercentageTouchesTheRootAndLiesAboveItElsewhere() {
        assertThat(Loading.speedAtMassByRule(10, 90, 90)).isEqualTo(10);
        for (double mass = 60; mass <= 135; mass += 5) {
            assertThat(Loading.speedAtMassByRule(10, 90, mass))
                    .isBetween(
                            Loading.speedAtMass(10, 90, mass),
                            1.0207 * Loading.speedAtMass(10, 90, mass));
        }
    }

    @Test
    void aMeanChordIsAreaOverSpan() {
        assertThat(Loading.aspectRatioByChord(11.8, 26 / 11.8))
                .isCloseTo(Loading.aspectRatio(11.8, 26), within(1e-12));
    }

    @Test
    void flatAndProjectedFiguresMixedGiveAWrongAspectRatio() {
        assertThat(Loading.aspectRatio(11.8, 22.1)).isGreaterThan(Loading.aspectRatio(11.8, 26));
    }
}
