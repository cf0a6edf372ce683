package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Altimeter;
import org.groundline.theory.Altitude;

import java.util.List;
import java.util.stream.Stream;

/// Pressure altitude, density altitude, altimeters and their settings.
final class Altitudes {
    private static final String EXACT =
            "derived here, from the standard atmosphere; checked against FAA-H-8083-13B, Glider Flying Handbook, 2024, pages 5-1 to 5-3";
    private static final String RULE = "common practice, no source";
    private static final String COLD = "ICAO Doc 8168 (PANS-OPS), as quoted in public copies";

    private Altitudes() {}

    static List<Quantity> quantities() {
        return Stream.of(altitudes(), settings(), coldAir()).flatMap(List::stream).toList();
    }

    private static List<Quantity> altitudes() {
        return List.of(
                new Quantity(
                        "pressure-altitude",
                        "Which altitude does an altimeter set to 1013.25 hPa show at this pressure?",
                        List.of(Input.of("pressure", "hPa", 540, 1050)),
                        Units.get("m"),
                        si -> Altitude.pressureAltitude(si[0]),
                        EXACT),
                new Quantity(
                        "pressure-altitude-of-field",
                        "Which pressure altitude has a field at this altimeter setting?",
                        List.of(
                                Input.of("elevation", "m", 0, 4000),
                                Input.of("altimeter-setting", "hPa", 950, 1050)),
                        Units.get("m"),
                        si -> Altitude.pressureAltitudeOfField(si[0], si[1]),
                        EXACT),
                new Quantity(
                        "pressure-altitude-by-rule",
                        "Which pressure altitude has a field by a rule of so many metres a hectopascal?",
                        List.of(
                                Input.of("elevation", "m", 0, 4000),
                                Input.of("altimeter-setting", "hPa", 950, 1050),
                                Input.of("height-per-pressure", "m/hPa", 8, 12)),
                        Units.get("m"),
                        si -> Altitude.pressureAltitudeByRule(si[0], si[1], si[2]),
                        RULE),
                new Quantity(
                        "density-altitude",
                        "At which altitude is the standard air as thin as this dry air?",
                        List.of(
                                Input.of("pressure-altitude", "m", 0, 4000),
                                Input.of("temperature", "°C", -30, 45)),
                        Units.get("m"),
                        si -> Altitude.densityAltitude(si[0], si[1]),
                        EXACT),
                new Quantity(
                        "density-altitude-moist",
                        "At which altitude is the standard air as thin as this moist air?",
                        List.of(
                                Input.of("pressure-altitude", "m", 0, 4000),
                                Input.of("temperature", "°C", -30, 45),
                                Input.of("dew-point", "°C", -30, 25)),
                        Units.get("m"),
                        si -> Altitude.densityAltitudeMoist(si[0], si[1], si[2]),
                        EXACT),
                new Quantity(
                        "density-altitude-by-rule",
                        "What is the density altitude by the rule of 120 ft for each kelvin?",
                        List.of(
                                Input.of("pressure-altitude", "m", 0, 4000),
                                Input.of("temperature", "°C", -30, 45)),
                        Units.get("m"),
                        si -> Altitude.densityAltitudeByRule(si[0], si[1]),
                        RULE));
    }

    private static List<Quantity> settings() {
        return List.of(
                new Quantity(
                        "height-per-pressure",
                        "How far does one climb until the pressure is one unit lower?",
                        List.of(Input.of("altitude", "m", 0, 5000)),
                        Units.get("m/hPa"),
                        si -> Altimeter.heightPerPressure(si[0]),
                        EXACT),
                new Quantity(
                        "field-pressure",
                        "Which pressure (QFE) has a field at this altimeter setting (QNH)?",
                        List.of(
                                Input.of("elevation", "m", 0, 4000),
                                Input.of("altimeter-setting", "hPa", 950, 1050)),
                        Units.get("hPa"),
                        si -> Altimeter.fieldPressure(si[0], si[1]),
                        EXACT),
                new Quantity(
                        "field-pressure-by-rule",
                        "Which pressure has a field by a rule of so many metres a hectopascal?",
                        List.of(
                                Input.of("elevation", "m", 0, 4000),
                                Input.of("altimeter-setting", "hPa", 950, 1050),
                                Input.of("height-per-pressure", "m/hPa", 8, 12)),
                        Units.get("hPa"),
                        si -> Altimeter.fieldPressureByRule(si[0], si[1], si[2]),
                        RULE),
                new Quantity(
                        "altimeter-setting",
                        "Which altimeter setting makes a field of this pressure show its elevation?",
                        List.of(
                                Input.of("elevation", "m", 0, 4000),
                                Input.of("field-pressure", "hPa", 600, 1050)),
                        Units.get("hPa"),
                        si -> Altimeter.altimeterSetting(si[0], si[1]),
                        EXACT),
                new Quantity(
                        "altimeter-over-read",
                        "By how much does an altimeter with a wrong setting show too high?",
                        List.of(
                                Input.of("set", "hPa", 950, 1050),
                                Input.of("correct", "hPa", 950, 1050)),
                        Units.get("m"),
                        si -> Altimeter.overRead(si[0], si[1]),
                        EXACT),
                new Quantity(
                        "flight-level",
                        "At which pressure altitude lies a flight level?",
                        List.of(Input.of("flight-level", "", 10, 200)),
                        Units.get("ft"),
                        si -> Altimeter.flightLevel(si[0]),
                        "its definition: 100 ft on 1013.25 hPa"),
                new Quantity(
                        "flight-level-altitude",
                        "How high above sea level is a flight level at this altimeter setting?",
                        List.of(
                                Input.of("flight-level", "", 10, 200),
                                Input.of("altimeter-setting", "hPa", 950, 1050)),
                        Units.get("ft"),
                        si -> Altimeter.flightLevelAltitude(si[0], si[1]),
                        EXACT));
    }

    private static List<Quantity> coldAir() {
        return List.of(
                new Quantity(
                        "true-height-by-rule",
                        "How high is one in air colder or warmer than standard, by 4 % for each 10 K?",
                        List.of(
                                Input.of("indicated-height", "m", 0, 3000),
                                Input.of("deviation", "K", -40, 40)),
                        Units.get("m"),
                        si -> Altimeter.trueHeightByRule(si[0], si[1]),
                        COLD),
                new Quantity(
                        "cold-correction",
                        "How much must be added to a height so that the altimeter shows it in cold air?",
                        List.of(
                                Input.of("height", "m", 0, 1500),
                                Input.of("temperature", "°C", -50, 15)),
                        Units.get("m"),
                        si -> Altimeter.coldCorrection(si[0], si[1]),
                        COLD));
    }
}
