package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Circuit;
import org.groundline.theory.Launch;

import java.util.List;

/// Take-off and landing: the run, the tow, the gust, the circuit, the wrong direction.
final class Fields {
    private static final String SPEEDS = "derived from airspeed, wind and density";
    private static final String TOW = "derived from the forces on a towed glider";

    private Fields() {}

    static List<Quantity> quantities() {
        return List.of(
                new Quantity(
                        "launch-run-speed",
                        "How fast does one have to run to take off?",
                        List.of(
                                Input.of("take-off-speed", "km/h", 15, 50),
                                Input.of("density", "kg/m³", 0.5, 1.4),
                                Input.of("headwind", "km/h", -20, 30)),
                        Units.get("km/h"),
                        si -> Launch.runSpeed(si[0], si[1], si[2]),
                        SPEEDS),
                new Quantity(
                        "penetration",
                        "How much speed is left against the strongest gust?",
                        List.of(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("gust", "km/h", 0, 60)),
                        Units.get("km/h"),
                        si -> Launch.penetration(si[0], si[1]),
                        SPEEDS),
                new Quantity(
                        "tow-load-factor",
                        "How many times its weight does the wing carry on the tow line?",
                        List.of(
                                Input.of("all-up-mass", "kg", 40, 250),
                                Input.of("pull", "N", 0, 2000),
                                Input.of("line-angle", "°", 0, 80)),
                        Units.get(""),
                        si -> Launch.towLoadFactor(si[0], si[1], si[2]),
                        TOW),
                new Quantity(
                        "circuit-height",
                        "How much height does a landing circuit of three legs use?",
                        List.of(
                                Input.of("downwind-leg", "m", 0, 1000),
                                Input.of("base-leg", "m", 0, 1000),
                                Input.of("final-leg", "m", 0, 1000),
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("wind", "km/h", 0, 40),
                                Input.of("sink-rate", "m/s", 0.5, 20)),
                        Units.get("m"),
                        si -> new Circuit(si[0], si[1], si[2]).heightUsed(si[3], si[4], si[5]),
                        SPEEDS),
                new Quantity(
                        "downwind-energy-ratio",
                        "How many times the energy of a landing into wind has one with it?",
                        List.of(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("wind", "km/h", 0, 40)),
                        Units.get(""),
                        si -> Circuit.downwindEnergyRatio(si[0], si[1]),
                        SPEEDS));
    }
}
