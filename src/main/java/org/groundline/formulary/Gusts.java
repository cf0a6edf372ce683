package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Gust;
import org.groundline.theory.WindProfile;

import java.util.List;

/// Gradient, gusts and the force of the wind.
final class Gusts {
    private static final String PROFILE =
            "from memory; checked against published test values of a wind-power library";
    private static final String PRESSURE = "derived here, from q = ½ ρ v²";

    private Gusts() {}

    static List<Quantity> quantities() {
        return List.of(
                new Quantity(
                        "wind-by-logarithmic-law",
                        "How strong is the wind at another height, by the logarithmic law?",
                        List.of(
                                Input.of("wind-speed", "km/h", 0, 60),
                                Input.of("reference-height", "m", 2, 100),
                                Input.of("height", "m", 2, 150),
                                Input.of("roughness", "m", 0.001, 1)),
                        Units.get("km/h"),
                        si -> WindProfile.logarithmic(si[0], si[1], si[2], si[3]),
                        PROFILE),
                new Quantity(
                        "wind-by-power-law",
                        "How strong is the wind at another height, by the power law?",
                        List.of(
                                Input.of("wind-speed", "km/h", 0, 60),
                                Input.of("reference-height", "m", 2, 100),
                                Input.of("height", "m", 2, 150),
                                Input.of("exponent", "", 0.1, 0.4)),
                        Units.get("km/h"),
                        si -> WindProfile.power(si[0], si[1], si[2], si[3]),
                        PROFILE),
                new Quantity(
                        "airspeed-margin-in-gradient",
                        "How much airspeed above the stall is left at worst after sinking through a gradient?",
                        List.of(
                                Input.of("airspeed", "km/h", 20, 120),
                                Input.of("headwind-above", "km/h", 0, 60),
                                Input.of("headwind-below", "km/h", 0, 60),
                                Input.of("stall-speed", "km/h", 15, 50)),
                        Units.get("km/h"),
                        si -> WindProfile.airspeedMargin(si[0], si[1], si[2], si[3]),
                        "derived here, for a glider that keeps its ground speed"),
                new Quantity(
                        "gust-factor",
                        "How many times the mean wind is the gust?",
                        List.of(Input.of("mean", "km/h", 1, 40), Input.of("gust", "km/h", 1, 80)),
                        Units.NUMBER,
                        si -> Gust.factor(si[0], si[1]),
                        "its definition"),
                new Quantity(
                        "gust-addition-for-sailplanes",
                        "How much faster does a sailplane approach in gusts?",
                        List.of(Input.of("mean", "km/h", 0, 60), Input.of("gust", "km/h", 0, 100)),
                        Units.get("km/h"),
                        si -> Gust.sailplaneAddition(si[0], si[1]),
                        "FAA-H-8083-13B, Glider Flying Handbook, 2024, page 3-15"),
                new Quantity(
                        "dynamic-pressure",
                        "Which pressure does air of this speed bring up against what stops it?",
                        List.of(
                                Input.of("speed", "km/h", 0, 150),
                                Input.of("density", "kg/m³", 0.7, 1.3)),
                        Units.get("Pa"),
                        si -> Gust.dynamicPressure(si[0], si[1]),
                        PRESSURE),
                new Quantity(
                        "wind-force-ratio",
                        "How many times as hard does another wind pull?",
                        List.of(
                                Input.of("wind", "km/h", 5, 60),
                                Input.of("new-wind", "km/h", 0, 100)),
                        Units.NUMBER,
                        si -> Gust.forceRatio(si[0], si[1]),
                        PRESSURE));
    }
}
