package org.groundline.theory;

import static org.groundline.theory.Refused.assertRefused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// What the functions of wind and weather refuse.
class WindAndWeatherRefusalsTest {
    @Test
    void aCrosswindAboveTheAirspeedHasNoCorrectionAngle() {
        assertRefused(
                () -> Wind.correctionAngle(10, 12, Math.PI / 2), "crosswind (m/s)", "airspeed 10");
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 12})
    void aWindThatLeavesNoProgressHasNoGroundSpeed(double windSpeed) {
        assertRefused(() -> Wind.groundSpeed(10, windSpeed, 0), "wind speed (m/s)", "ground speed");
    }

    @Test
    void aCalmComesFromNowhere() {
        assertRefused(() -> Wind.from(0, 0), "wind speed (m/s)", "above zero");
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e6, -1e6, Double.NaN, Double.NEGATIVE_INFINITY})
    void aDirectionThatIsNoneIsRefused(double direction) {
        assertRefused(() -> Wind.angle(direction, 0), "course (rad)", "" + direction);
        assertRefused(() -> Wind.headwind(5, direction), "angle (rad)", "" + direction);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 13, 2.5, Double.NaN})
    void aForceThatIsNotOnTheScaleIsRefused(double force) {
        assertRefused(() -> Beaufort.lowest(force), "force", "" + force);
    }

    @Test
    void theHighestForceHasNoUpperEdge() {
        assertRefused(() -> Beaufort.highest(12), "force", "11");
    }

    @Test
    void aGustBelowTheMeanWindIsRefused() {
        assertRefused(() -> Gust.factor(8, 7), "gust (m/s)", "mean wind 8");
        assertRefused(() -> Gust.sailplaneAddition(8, 7), "gust (m/s)", "mean wind 8");
    }

    @Test
    void theLogarithmicProfileEndsAtTheRoughnessLength() {
        assertRefused(() -> WindProfile.logarithmic(5, 10, 0.05, 0.1), "height (m)", "0.1");
        assertRefused(() -> WindProfile.logarithmic(5, 0.1, 10, 0.1), "reference height", "0.11");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
    void anExponentOutsideNoughtToOneIsRefused(double exponent) {
        assertRefused(() -> WindProfile.power(5, 10, 2, exponent), "exponent", "" + exponent);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.3, 1, 0, Double.NaN})
    void anUpdraftThatDoesNotLiftTheGliderHasNoClimb(double updraft) {
        assertRefused(() -> Thermal.climbTime(900, updraft, 1.3), "updraft (m/s)", "" + updraft);
    }

    @Test
    void aMarginBelowTheCloudThatIsUsedUpIsRefused() {
        assertRefused(() -> Thermal.timeToCloud(2_000, 1_800, 300, 2), "height (m)", "1700");
    }

    @Test
    void whereItFreezesAtTheStationThereIsNoFreezingLevelAbove() {
        assertRefused(() -> Thermal.freezingLevel(500, 272, 0.0065), "temperature (K)", "273.15");
    }

    @Test
    void airAroundThatCoolsAsFastAsTheDryRateHasNoTopOfThermals() {
        assertRefused(() -> Thermal.blueTop(300, 297, 0.0098, 0.0098), "lapse rate", "dry one");
        assertRefused(() -> Thermal.blueTop(296, 297, 0.0065, 0.0098), "ground (K)", "297");
    }

    @Test
    void aRidgeBelowTheCloudBaseMakesNoFoehn() {
        var rates = new Lapse.Rates(0.0098, 0.006);
        assertRefused(() -> Thermal.foehnWarming(2_000, 1_500, rates), "ridge (m)", "2000");
    }

    @Test
    void aSaturatedRateAboveTheDryOneIsRefused() {
        assertRefused(() -> new Lapse.Rates(0.0098, 0.011), "saturated lapse", "0.0098");
        assertRefused(() -> new Lapse.Rates(0, 0), "dry lapse rate", "above zero");
    }

    @Test
    void saturatedAirIsOnlyFollowedUpwards() {
        assertRefused(() -> Lapse.saturatedAdiabat(290, 8e4, 9e4), "new pressure (Pa)", "80000");
    }

    @Test
    void liftingBelowAbsoluteZeroIsRefused() {
        assertRefused(() -> Lapse.lifted(290, 40_000, 0.0098), "after the rise", "above zero");
    }

    @Test
    void aNegativeSpreadIsRefused() {
        assertRefused(() -> CloudBase.byMetreRule(-1), "spread (K)", "zero or above");
    }

    @Test
    void aFrontThatDoesNotMoveIsRefused() {
        assertRefused(() -> Storm.frontArrival(1_000, 0), "speed of the front", "above zero");
    }
}
