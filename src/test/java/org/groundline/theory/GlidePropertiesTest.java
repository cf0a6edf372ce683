package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class GlidePropertiesTest {
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
    void fromRatioSixOnAirspeedMayStandForItsHorizontalPart() {
        // The reason to neglect the difference: V cos γ falls short of V by less than 1.4 %.
        assertThat(Math.cos(Glide.angle(6))).isBetween(0.986, 1.0);
        assertThat(Math.cos(Glide.angle(5))).isLessThan(0.986);
    }

    @Test
    void theSinkRateOfARatioGivesTheRatioBack() {
        assertThat(Glide.ratio(10.5, Glide.sinkRate(10.5, 8.8))).isCloseTo(8.8, within(1e-12));
    }

    @Test
    void theRatioFlownOverTheReachableDistanceIsTheRatioOverGround() {
        double distance = Glide.distance(600, Glide.groundSpeed(10.5, 4), 1.2);
        assertThat(Glide.ratioFlown(distance, 600))
                .isCloseTo(Glide.ratioOverGround(10.5, 4, 1.2, 0), within(1e-12));
    }

    @Test
    void withoutWindAndMovingAirAllRatiosAreTheSame() {
        double ratio = Glide.ratio(10.5, 1.2);
        assertThat(Glide.ratioOverGround(10.5, 0, 1.2, 0)).isEqualTo(ratio);
        assertThat(Glide.ratioInWind(ratio, 10.5, 0)).isCloseTo(ratio, within(1e-12));
    }

    @Test
    void moreHeadwindAndMoreSinkShortenTheGlide() {
        for (double wind = -8; wind < 8; wind++) {
            assertThat(Glide.ratioOverGround(10, wind + 1, 1.2, 0.5))
                    .isLessThan(Glide.ratioOverGround(10, wind, 1.2, 0.5));
        }
        for (double sink = -1; sink < 4; sink += 0.5) {
            assertThat(Glide.ratioOverGround(10, 2, 1.2, sink + 0.5))
                    .isLessThan(Glide.ratioOverGround(10, 2, 1.2, sink));
        }
    }

    @Test
    void intoWindTheHeavierPilotGlidesFurtherAndInStillAirNot() {
        // 90 to 105 kg on the same wing: speed and sink rate grow alike.
        double speed = Loading.speedAtMass(10.6, 90, 105);
        double sink = Loading.speedAtMass(1.184, 90, 105);
        assertThat(Glide.ratio(speed, sink)).isCloseTo(Glide.ratio(10.6, 1.184), within(1e-12));
        assertThat(Glide.ratioOverGround(speed, 5.5, sink, 0))
                .isGreaterThan(Glide.ratioOverGround(10.6, 5.5, 1.184, 0));
    }

    @Test
    void withoutHeadwindTheHalfHeadwindRuleLeavesBestGlideAlone() {
        assertThat(Glide.speedByHalfHeadwindRule(12, 0)).isEqualTo(12);
    }
}
