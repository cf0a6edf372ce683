package org.groundline.theory;

import static org.groundline.theory.Refused.assertRefused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// What the functions of air, altitudes and the pilot refuse.
class AirRefusalsTest {
    @ParameterizedTest
    @ValueSource(doubles = {22_000, 178_000, 0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aPressureFromOutsideTheTroposphereIsRefused(double pressure) {
        assertRefused(() -> Altitude.pressureAltitude(pressure), "pressure (Pa)", "" + pressure);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 2, 0, Double.NaN})
    void aDensityFromOutsideTheTroposphereIsRefused(double density) {
        assertRefused(
                () -> StandardAtmosphere.altitudeAtDensity(density),
                "density (kg/m³)",
                "" + density);
    }

    @Test
    void aFieldAboveTheTroposphereIsRefused() {
        assertRefused(() -> Altitude.pressureAltitudeOfField(10_900, 95_000), "field", "11000");
        assertRefused(() -> Altimeter.fieldPressure(12_000, 95_000), "elevation (m)", "12000");
    }

    @Test
    void anAnswerOutsideTheTroposphereIsRefused() {
        assertRefused(() -> Altitude.densityAltitude(10_900, 320), "density", "11000");
        assertRefused(() -> StandardAtmosphere.geopotentialAltitude(11_500), "altitude", "11000");
    }

    @Test
    void aRuleThatLeavesNoPressureIsRefused() {
        assertRefused(
                () -> Altimeter.fieldPressureByRule(9_000, 101_325, 0.08),
                "at the field",
                "above zero");
    }

    @ParameterizedTest
    @ValueSource(doubles = {192, 334, Double.NaN})
    void aTemperatureThatTheVapourFormulaWasNotMadeForIsRefused(double temperature) {
        assertRefused(() -> Humidity.saturationPressure(temperature), "temperature (K)", "193.");
        assertRefused(() -> CloudBase.byHumidity(temperature, 0.5), "temperature (K)", "333.");
    }

    @Test
    void aDewPointAboveTheTemperatureIsRefused() {
        assertRefused(() -> Humidity.relativeHumidity(290, 291), "dew point (K)", "290");
        assertRefused(() -> Humidity.virtualTemperature(9e4, 290, 291), "dew point (K)", "290");
        assertRefused(() -> CloudBase.condensationTemperature(290, 291), "dew point (K)", "290");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN})
    void aHumidityOfNothingOrMoreThanAllIsRefused(double humidity) {
        assertRefused(() -> Humidity.dewPoint(290, humidity), "relative humidity", "" + humidity);
        assertRefused(
                () -> CloudBase.condensationLevel(9e4, 290, humidity),
                "relative humidity",
                "" + humidity);
    }

    @Test
    void airThatIsMostlyVapourIsRefused() {
        assertRefused(() -> Humidity.moistDensity(3_000, 300, 300), "pressure (Pa)", "twice");
        assertRefused(() -> Lapse.saturated(3_000, 300), "pressure (Pa)", "twice");
        assertRefused(() -> CloudBase.condensationLevel(3_000, 300, 1), "pressure (Pa)", "twice");
    }

    @Test
    void aColdCorrectionInWarmAirIsRefused() {
        assertRefused(() -> Altimeter.coldCorrection(600, 300), "temperature (K)", "288.15");
    }

    @Test
    void aFlightLevelBelowZeroIsRefused() {
        assertRefused(() -> Altimeter.flightLevel(-1), "flight level", "zero or above");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aSpeedThatMustBePositiveIsRefusedOtherwise(double speed) {
        assertRefused(() -> Airspeed.equivalentAirspeed(speed, 0), "airspeed", "above zero");
        assertRefused(() -> Airspeed.trueAirspeedInAir(speed, 1), "airspeed", "above zero");
        assertRefused(() -> Airspeed.trueAirspeedByRule(speed, 0), "airspeed", "above zero");
        assertRefused(() -> Human.windChill(270, speed), "wind speed (m/s)", "above zero");
        assertRefused(() -> Human.closingTime(300, speed, 10), "speed (m/s)", "above zero");
    }

    @Test
    void aTimeBelowZeroIsRefused() {
        assertRefused(() -> Human.reactionDistance(10, -1), "time (s)", "zero or above");
        assertRefused(() -> Storm.lightningDistance(-1), "delay (s)", "zero or above");
    }
}
