package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Airspeed;
import org.groundline.theory.StandardAtmosphere;

import java.util.List;
import java.util.stream.Stream;

/// The standard atmosphere, and airspeeds in it.
final class Atmosphere {
    private static final String ICAO =
            "ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd ed., 1993, from memory";
    private static final String DERIVED = "derived here, from equal dynamic pressure";

    private Atmosphere() {}

    static List<Quantity> quantities() {
        return Stream.of(air(), airspeeds()).flatMap(List::stream).toList();
    }

    private static List<Quantity> air() {
        return List.of(
                new Quantity(
                        "standard-temperature",
                        "How warm is the standard air at this altitude?",
                        List.of(Input.of("altitude", "m", 0, 5000)),
                        Units.CELSIUS,
                        si -> StandardAtmosphere.temperature(si[0]),
                        ICAO),
                new Quantity(
                        "standard-pressure",
                        "What is the pressure of the standard air at this altitude?",
                        List.of(Input.of("altitude", "m", 0, 5000)),
                        Units.get("hPa"),
                        si -> StandardAtmosphere.pressure(si[0]),
                        ICAO),
                new Quantity(
                        "air-density",
                        "How dense is the standard air at this altitude?",
                        List.of(Input.of("altitude", "m", 0, 5000)),
                        Units.get("kg/m³"),
                        si -> StandardAtmosphere.density(si[0]),
                        ICAO),
                new Quantity(
                        "density-ratio",
                        "Which part of the sea-level density is left at this altitude?",
                        List.of(Input.of("altitude", "m", 0, 5000)),
                        Units.NUMBER,
                        si -> StandardAtmosphere.densityRatio(si[0]),
                        ICAO),
                new Quantity(
                        "altitude-at-density",
                        "At which altitude is the standard air as dense as this?",
                        List.of(Input.of("density", "kg/m³", 0.7, 1.3)),
                        Units.get("m"),
                        si -> StandardAtmosphere.altitudeAtDensity(si[0]),
                        ICAO),
                new Quantity(
                        "geopotential-altitude",
                        "Which geopotential altitude has this geometric height?",
                        List.of(Input.of("height", "m", 0, 5000)),
                        Units.get("m"),
                        si -> StandardAtmosphere.geopotentialAltitude(si[0]),
                        "U.S. Standard Atmosphere, 1976, by its published table"));
    }

    private static List<Quantity> airspeeds() {
        return List.of(
                new Quantity(
                        "true-airspeed",
                        "How fast through the air is this indicated airspeed at this altitude?",
                        List.of(
                                Input.of("equivalent-airspeed", "km/h", 15, 150),
                                Input.of("altitude", "m", 0, 5000)),
                        Units.get("km/h"),
                        si -> StandardAtmosphere.trueAirspeed(si[0], si[1]),
                        DERIVED),
                new Quantity(
                        "true-airspeed-in-air",
                        "How fast through air of this density is this indicated airspeed?",
                        List.of(
                                Input.of("equivalent-airspeed", "km/h", 15, 150),
                                Input.of("density", "kg/m³", 0.7, 1.3)),
                        Units.get("km/h"),
                        si -> Airspeed.trueAirspeedInAir(si[0], si[1]),
                        DERIVED),
                new Quantity(
                        "true-airspeed-by-rule",
                        "What is the true airspeed by the rule of 2 % for each 1000 ft?",
                        List.of(
                                Input.of("indicated-airspeed", "km/h", 15, 150),
                                Input.of("altitude", "m", 0, 5000)),
                        Units.get("km/h"),
                        si -> Airspeed.trueAirspeedByRule(si[0], si[1]),
                        "FAA-H-8083-13B, Glider Flying Handbook, 2024, page 4-5, figure 4-8"),
                new Quantity(
                        "equivalent-airspeed",
                        "Which airspeed is indicated at this true airspeed and altitude?",
                        List.of(
                                Input.of("true-airspeed", "km/h", 15, 200),
                                Input.of("altitude", "m", 0, 5000)),
                        Units.get("km/h"),
                        si -> Airspeed.equivalentAirspeed(si[0], si[1]),
                        DERIVED));
    }
}
