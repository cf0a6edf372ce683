package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/// What always holds for cloud base, lapse rates, thermals, storms, and for the pilot in the cold.
class WeatherPropertiesTest {
    private static final double SEA_LEVEL = 100_000; // (Pa)

    @Test
    void saturatedAirIsInCloudAtOnce() {
        assertThat(CloudBase.byMetreRule(0)).isZero();
        assertThat(CloudBase.byFeetRule(0)).isZero();
        assertThat(CloudBase.byHumidity(293.15, 1)).isZero();
        assertThat(CloudBase.condensationLevel(SEA_LEVEL, 293.15, 1)).isZero();
        assertThat(CloudBase.condensationTemperature(293.15, 293.15))
                .isCloseTo(293.15, within(1e-9));
    }

    @Test
    void theDrierTheAirTheHigherItCondenses() {
        double before = 0;
        for (double humidity = 0.99; humidity > 0.01; humidity -= 0.01) {
            double level = CloudBase.condensationLevel(SEA_LEVEL, 293.15, humidity);
            assertThat(level).isGreaterThan(before);
            before = level;
        }
    }

    @Test
    void theRulesOfThumbAreNearTheExactCondensationLevel() {
        // The margins are what was measured here (6, 8 and 10 %), not published ones.
        for (double celsius = 5; celsius <= 35; celsius += 5) {
            for (double humidity = 0.55; humidity < 0.95; humidity += 0.1) {
                double temperature = celsius + 273.15;
                double spread = temperature - Humidity.dewPoint(temperature, humidity);
                double exact = CloudBase.condensationLevel(SEA_LEVEL, temperature, humidity);
                assertThat(CloudBase.byMetreRule(spread)).isCloseTo(exact, within(0.06 * exact));
                assertThat(CloudBase.byFeetRule(spread)).isCloseTo(exact, within(0.08 * exact));
                assertThat(CloudBase.byHumidity(temperature, humidity))
                        .isCloseTo(exact, within(0.1 * exact));
            }
        }
    }

    @Test
    void bothExactWaysToTheCondensationLevelAgree() {
        double dewPoint = Humidity.dewPoint(300, 0.5);
        double cooling = 300 - CloudBase.condensationTemperature(300, dewPoint);
        assertThat(cooling / Lapse.dry())
                .isCloseTo(CloudBase.condensationLevel(SEA_LEVEL, 300, 0.5), within(15.0));
    }

    @Test
    void dryAirBroughtUpAndDownIsAsWarmAsBefore() {
        double lifted = Lapse.dryAdiabat(295, 95_000, 70_000);
        assertThat(Lapse.dryAdiabat(lifted, 70_000, 95_000)).isCloseTo(295, within(1e-9));
    }

    @Test
    void saturatedAirCoolsLessThanDryAirAndNearlyAsMuchWhereItIsCold() {
        for (double temperature = 200; temperature <= 305; temperature += 5) {
            assertThat(Lapse.saturated(SEA_LEVEL, temperature)).isLessThan(Lapse.dry());
        }
        assertThat(Lapse.saturated(30_000, 220)).isCloseTo(Lapse.dry(), within(0.0005));
    }

    @Test
    void lowAndWarmTheSaturatedRateIsWithinWhatTheHandbookPrints() {
        // FAA-H-8083-13B, 2024, pages 9-9 and 9-10: 1.2 °C for each 1000 ft low, 2.2 at middle
        // levels.
        double low = 304.8 * Lapse.saturated(SEA_LEVEL, 300);
        double middle = 304.8 * Lapse.saturated(60_000, 263);
        assertThat(low).isCloseTo(1.2, within(0.1));
        assertThat(middle).isCloseTo(2.2, within(0.2));
    }

    @Test
    void theSaturatedAdiabatFollowsTheSaturatedRate() {
        double step = 100;
        double cooling = 290 - Lapse.saturatedAdiabat(290, 90_000, 90_000 - step);
        double rise = step * 287.05 * 290 / (90_000 * StandardAtmosphere.GRAVITY);
        assertThat(cooling / rise).isCloseTo(Lapse.saturated(90_000, 290), within(1e-5));
    }

    @Test
    void belowTheCloudBaseOnlyTheDryRateCounts() {
        var rates = new Lapse.Rates(0.0098, 0.006);
        assertThat(Lapse.liftedIntoCloud(298, 900, 1_000, rates))
                .isEqualTo(Lapse.lifted(298, 900, 0.0098));
        assertThat(Lapse.liftedIntoCloud(298, 900, 0, rates))
                .isEqualTo(Lapse.lifted(298, 900, 0.006));
    }

    @Test
    void airIsUnstableAboveTheDryRateAndStableBelowTheSaturatedOne() {
        var rates = new Lapse.Rates(0.0098, 0.006);
        assertThat(Stability.of(0.011, rates)).isEqualTo(Stability.UNSTABLE);
        assertThat(Stability.of(0.0098, rates)).isEqualTo(Stability.CONDITIONAL);
        assertThat(Stability.of(0.0065, rates)).isEqualTo(Stability.CONDITIONAL);
        assertThat(Stability.of(0.005, rates)).isEqualTo(Stability.STABLE);
        assertThat(Stability.of(-0.01, rates)).isEqualTo(Stability.STABLE);
    }

    @Test
    void atTheTopOfBlueThermalsRisingAirIsAsWarmAsTheAirAround() {
        double top = Thermal.blueTop(300, 297, 0.0065, 0.0098);
        assertThat(Lapse.lifted(300, top, 0.0098))
                .isCloseTo(Lapse.lifted(297, top, 0.0065), within(1e-9));
    }

    @Test
    void airAtTheTriggerTemperatureIsAsWarmAsTheInversionWhenItGetsThere() {
        double trigger = Thermal.trigger(287, 1_200, 0.0098);
        assertThat(Lapse.lifted(trigger, 1_200, 0.0098)).isCloseTo(287, within(1e-9));
    }

    @Test
    void atTheFreezingLevelItIsZero() {
        double level = Thermal.freezingLevel(800, 290, 0.0065);
        assertThat(Lapse.lifted(290, level - 800, 0.0065)).isCloseTo(273.15, within(1e-9));
    }

    @Test
    void overTheRidgeAndDownTheAirIsWarmerByTheFoehn() {
        var rates = new Lapse.Rates(0.0098, 0.006);
        double atRidge = Lapse.liftedIntoCloud(290, 2_500, 1_000, rates);
        double behind = Lapse.lifted(atRidge, -2_500, 0.0098);
        assertThat(behind - 290).isCloseTo(Thermal.foehnWarming(1_000, 2_500, rates), within(1e-9));
    }

    @Test
    void theGainIsTheClimbTimesTheTime() {
        assertThat(Thermal.climb(3, 1.3) * Thermal.climbTime(900, 3, 1.3))
                .isCloseTo(900, within(1e-9));
        assertThat(Thermal.timeToCloud(2_000, 1_700, 300, 2)).isZero();
    }

    @Test
    void aFrontThatArrivesAsOneLandsLeavesNoMargin() {
        double time = Storm.frontArrival(12_000, 12);
        assertThat(Storm.marginBeforeFront(12_000, 12, 1.2 * time, 1.2)).isCloseTo(0, within(1e-9));
        assertThat(Storm.marginBeforeFront(1_000, 12, 1_000, 1.2)).isNegative();
    }

    @Test
    void moreWindFeelsColderAndBothFormulasAgreeToTheRoundingOfTheirCoefficients() {
        double before = Double.MAX_VALUE;
        for (double wind = 2; wind <= 25; wind++) {
            double chill = Human.windChill(263.15, wind);
            assertThat(chill).isLessThan(before);
            assertThat(Human.windChillUs(263.15, wind)).isCloseTo(chill, within(0.1));
            before = chill;
        }
    }

    @Test
    void theShareOfOxygenIsTheSameAtAllHeights() {
        for (double altitude = 0; altitude <= 9_000; altitude += 1_000) {
            assertThat(Human.oxygenPressure(altitude) / StandardAtmosphere.pressure(altitude))
                    .isCloseTo(0.2095, within(1e-12));
        }
    }

    @Test
    void bothTogetherFlyTheDistanceUntilTheyMeet() {
        double time = Human.closingTime(300, 10, 12);
        assertThat(Human.reactionDistance(10, time) + Human.reactionDistance(12, time))
                .isCloseTo(300, within(1e-9));
    }
}
