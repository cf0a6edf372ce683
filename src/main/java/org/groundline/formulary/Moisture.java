package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Humidity;

import java.util.List;

/// Water vapour, and the density of the air that holds it.
final class Moisture {
    private static final String BOLTON = "Bolton, Monthly Weather Review 108, 1980, equation 10";
    private static final String GAS = "derived here, from the ideal gas law";

    private Moisture() {}

    static List<Quantity> quantities() {
        return List.of(
                new Quantity(
                        "saturation-vapour-pressure",
                        "How much vapour can the air hold, as a pressure?",
                        List.of(Input.of("temperature", "°C", -30, 35)),
                        Units.get("hPa"),
                        si -> Humidity.saturationPressure(si[0]),
                        BOLTON),
                new Quantity(
                        "relative-humidity",
                        "How much of the vapour that it could hold does the air hold?",
                        List.of(
                                Input.of("temperature", "°C", -30, 35),
                                Input.of("dew-point", "°C", -30, 35)),
                        Units.get("%"),
                        si -> Humidity.relativeHumidity(si[0], si[1]),
                        BOLTON),
                new Quantity(
                        "dew-point",
                        "At which temperature does this air become saturated when it cools?",
                        List.of(
                                Input.of("temperature", "°C", -30, 35),
                                Input.of("relative-humidity", "%", 5, 100)),
                        Units.CELSIUS,
                        si -> Humidity.dewPoint(si[0], si[1]),
                        BOLTON),
                new Quantity(
                        "dry-air-density",
                        "How dense is dry air of this pressure and temperature?",
                        List.of(
                                Input.of("pressure", "hPa", 500, 1050),
                                Input.of("temperature", "°C", -30, 45)),
                        Units.get("kg/m³"),
                        si -> Humidity.dryDensity(si[0], si[1]),
                        GAS),
                new Quantity(
                        "moist-air-density",
                        "How dense is moist air of this pressure, temperature and dew point?",
                        List.of(
                                Input.of("pressure", "hPa", 500, 1050),
                                Input.of("temperature", "°C", -30, 45),
                                Input.of("dew-point", "°C", -30, 25)),
                        Units.get("kg/m³"),
                        si -> Humidity.moistDensity(si[0], si[1], si[2]),
                        GAS),
                new Quantity(
                        "virtual-temperature",
                        "How warm would dry air be that is as thin as this moist air?",
                        List.of(
                                Input.of("pressure", "hPa", 500, 1050),
                                Input.of("temperature", "°C", -30, 45),
                                Input.of("dew-point", "°C", -30, 25)),
                        Units.CELSIUS,
                        si -> Humidity.virtualTemperature(si[0], si[1], si[2]),
                        GAS));
    }
}
