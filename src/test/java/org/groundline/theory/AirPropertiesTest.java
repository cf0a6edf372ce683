package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/// What always holds for the air, altitudes and altimeters.
class AirPropertiesTest {
    private static final double STANDARD = 101_325; // (Pa)
    private static final double WARM = 298.15; // (K)

    @Test
    void theAltitudeOfAPressureOrADensityIsTheOneItBelongsTo() {
        for (double altitude = -4_900; altitude < 11_000; altitude += 300) {
            double pressure = StandardAtmosphere.pressure(altitude);
            double density = StandardAtmosphere.density(altitude);
            assertThat(StandardAtmosphere.altitudeAtPressure(pressure))
                    .isCloseTo(altitude, within(1e-6));
            assertThat(StandardAtmosphere.altitudeAtDensity(density))
                    .isCloseTo(altitude, within(1e-6));
        }
    }

    @Test
    void geopotentialAltitudeIsTheLowerOneAndFourMetresApartAtFiveKilometres() {
        assertThat(5_000 - StandardAtmosphere.geopotentialAltitude(5_000))
                .isCloseTo(4, within(0.1));
        assertThat(StandardAtmosphere.geopotentialAltitude(0)).isZero();
    }

    @Test
    void onAStandardDayDensityAltitudeIsPressureAltitude() {
        for (double altitude = -4_900; altitude < 11_000; altitude += 300) {
            double temperature = StandardAtmosphere.temperature(altitude);
            assertThat(Altitude.densityAltitude(altitude, temperature))
                    .isCloseTo(altitude, within(1e-6));
            assertThat(Altitude.densityAltitudeByRule(altitude, temperature)).isEqualTo(altitude);
        }
    }

    @Test
    void thirtyDegreesAddAsMuchDensityAltitudeAsWasWorkedOutByHand() {
        // Exact and dry about 525 m at sea level and 950 m at 2000 m, by the rule 550 and 1000 m.
        assertThat(Altitude.densityAltitude(0, 303.15)).isCloseTo(525, within(5.0));
        assertThat(Altitude.densityAltitude(2_000, 303.15) - 2_000).isCloseTo(950, within(10.0));
        assertThat(Altitude.densityAltitudeByRule(0, 303.15)).isCloseTo(550, within(5.0));
        assertThat(Altitude.densityAltitudeByRule(2_000, 303.15) - 2_000)
                .isCloseTo(1_000, within(30.0));
    }

    @Test
    void moistAirIsThinnerThanDryAirAndTheMoreSoTheHigherTheDewPoint() {
        double before = Humidity.dryDensity(STANDARD, WARM);
        for (double dewPoint = 250; dewPoint <= WARM; dewPoint += 5) {
            double density = Humidity.moistDensity(STANDARD, WARM, dewPoint);
            assertThat(density).isLessThan(before);
            before = density;
        }
    }

    @Test
    void theDensityOfMoistAirIsThatOfItsTwoGasesTogether() {
        double vapour = Humidity.saturationPressure(288.15);
        double gas = StandardAtmosphere.GAS_CONSTANT * WARM;
        double together = (STANDARD - vapour) / gas + 0.622 * vapour / gas;
        assertThat(Humidity.moistDensity(STANDARD, WARM, 288.15))
                .isCloseTo(together, within(1e-12));
    }

    @Test
    void theDewPointGivesBackTheHumidity() {
        for (double humidity = 0.05; humidity < 1; humidity += 0.05) {
            double dewPoint = Humidity.dewPoint(WARM, humidity);
            assertThat(Humidity.relativeHumidity(WARM, dewPoint))
                    .isCloseTo(humidity, within(1e-12));
        }
    }

    @Test
    void aLowSettingRaisesThePressureAltitude() {
        assertThat(Altitude.pressureAltitudeOfField(500, 100_000)).isGreaterThan(500);
        assertThat(Altitude.pressureAltitudeOfField(500, 102_500)).isLessThan(500);
        assertThat(Altitude.pressureAltitudeOfField(500, STANDARD)).isEqualTo(500);
    }

    @Test
    void theRuleOfEightPointThreeMetresHoldsNearSeaLevel() {
        for (double qnh = 99_000; qnh <= 104_000; qnh += 500) {
            assertThat(Altitude.pressureAltitudeByRule(300, qnh, 0.083))
                    .isCloseTo(Altitude.pressureAltitudeOfField(300, qnh), within(5.0));
        }
    }

    @Test
    void theSettingThatGivesAFieldPressureIsTheOneThatItGives() {
        double fieldPressure = Altimeter.fieldPressure(800, 102_000);
        assertThat(Altimeter.altimeterSetting(800, fieldPressure)).isCloseTo(102_000, within(1e-6));
    }

    @Test
    void climbingByTheHeightOfAHectopascalLowersThePressureByOne() {
        for (double altitude = 0; altitude < 10_000; altitude += 500) {
            double step = Altimeter.heightPerPressure(altitude);
            double drop =
                    StandardAtmosphere.pressure(altitude - step / 2)
                            - StandardAtmosphere.pressure(altitude + step / 2);
            assertThat(drop).isCloseTo(1, within(1e-6));
        }
    }

    @Test
    void fromHighToLowTheAltimeterShowsTooHigh() {
        assertThat(Altimeter.overRead(102_000, 101_000)).isPositive();
        assertThat(Altimeter.overRead(101_000, 102_000)).isNegative();
    }

    @Test
    void inColdAirOneIsLowerThanShownAndInWarmAirHigher() {
        assertThat(Altimeter.trueHeightByRule(1_000, -20)).isCloseTo(920, within(1e-9));
        assertThat(Altimeter.trueHeightByRule(1_000, 20)).isCloseTo(1_080, within(1e-9));
        assertThat(Altimeter.coldCorrection(600, 288.15)).isZero();
        assertThat(Altimeter.coldCorrection(600, 253.15))
                .isGreaterThan(Altimeter.coldCorrection(600, 263.15));
    }

    @Test
    void theColdCorrectionIsTheRuleOfFourPercentWithinItsOwnAccuracyInModerateCold() {
        double byRule = 1_000 - Altimeter.trueHeightByRule(1_000, -25);
        assertThat(Altimeter.coldCorrection(1_000, 263.15)).isCloseTo(byRule, within(5.0));
    }

    @Test
    void equivalentAndTrueAirspeedAreInverse() {
        for (double altitude = 0; altitude < 11_000; altitude += 500) {
            double trueAirspeed = StandardAtmosphere.trueAirspeed(11, altitude);
            assertThat(Airspeed.equivalentAirspeed(trueAirspeed, altitude))
                    .isCloseTo(11, within(1e-12));
            assertThat(Airspeed.trueAirspeedInAir(11, StandardAtmosphere.density(altitude)))
                    .isCloseTo(trueAirspeed, within(1e-12));
        }
    }

    @Test
    void theRuleOfTwoPercentGivesTooMuchInTheHeightsThatAreFlown() {
        for (double altitude = 300; altitude <= 6_000; altitude += 300) {
            assertThat(Airspeed.trueAirspeedByRule(11, altitude))
                    .isGreaterThan(StandardAtmosphere.trueAirspeed(11, altitude));
        }
    }
}
