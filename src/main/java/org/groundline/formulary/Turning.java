package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.SameAngleTurn;
import org.groundline.theory.Turn;

import java.util.List;

/// The turn: load, stall, circle, sink, and the spiral.
final class Turning {
    private static final String LOAD =
            "FAA-H-8083-13B, Glider Flying Handbook, 2024, pages 3-12 and 5-8";
    private static final String CIRCLE = "FAA-H-8083-13B, Glider Flying Handbook, 2024, page 3-13";
    private static final String SAME_ANGLE =
            "derived from the load factor; FAA-H-8083-13B, Glider Flying Handbook, 2024, page 3-12";
    private static final String SPIRAL = "derived from the forces in a steady helix";

    private Turning() {}

    static List<Quantity> quantities() {
        return List.of(
                new Quantity(
                        "load-factor",
                        "How many times its weight does the wing carry at this bank?",
                        List.of(Input.of("bank", "°", 0, 80)),
                        Units.get(""),
                        si -> Turn.loadFactor(si[0]),
                        LOAD),
                new Quantity(
                        "stall-speed",
                        "At which airspeed does the wing stall under this load?",
                        List.of(
                                Input.of("stall-speed", "km/h", 10, 60),
                                Input.of("load-factor", "", 1, 8)),
                        Units.get("km/h"),
                        si -> Turn.stallSpeed(si[0], si[1]),
                        LOAD),
                new Quantity(
                        "stall-speed-at-bank",
                        "At which airspeed does the wing stall at this bank?",
                        List.of(
                                Input.of("stall-speed", "km/h", 10, 60),
                                Input.of("bank", "°", 0, 80)),
                        Units.get("km/h"),
                        si -> Turn.stallSpeedAtBank(si[0], si[1]),
                        LOAD),
                new Quantity(
                        "highest-load-factor",
                        "At which load does the wing stall at this airspeed?",
                        List.of(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("stall-speed", "km/h", 10, 60)),
                        Units.get(""),
                        si -> Turn.highestLoadFactor(si[0], si[1]),
                        LOAD),
                new Quantity(
                        "bank-at-load-factor",
                        "Which bank goes with this load in a steady turn?",
                        List.of(Input.of("load-factor", "", 1, 6)),
                        Units.get("°"),
                        si -> Turn.bankAtLoadFactor(si[0]),
                        LOAD),
                new Quantity(
                        "turn-radius",
                        "How wide is the circle flown at this airspeed?",
                        List.of(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("bank", "°", 1, 70)),
                        Units.get("m"),
                        si -> Turn.radius(si[0], si[1]),
                        CIRCLE),
                new Quantity(
                        "turn-rate",
                        "How fast does the nose swing round at this airspeed?",
                        List.of(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("bank", "°", 1, 70)),
                        Units.get("°/s"),
                        si -> Turn.rate(si[0], si[1]),
                        CIRCLE),
                new Quantity(
                        "turn-time",
                        "How long does a full circle take at this airspeed?",
                        List.of(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("bank", "°", 1, 70)),
                        Units.get("s"),
                        si -> Turn.time(si[0], si[1]),
                        CIRCLE),
                new Quantity(
                        "bank-for-turn-radius",
                        "Which bank flies this circle at this airspeed?",
                        List.of(
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("radius", "m", 3, 500)),
                        Units.get("°"),
                        si -> Turn.bankForRadius(si[0], si[1]),
                        CIRCLE),
                new Quantity(
                        "spiral-load-factor",
                        "How many times their weight do pilots feel in a steady spiral dive?",
                        List.of(
                                Input.of("horizontal-speed", "km/h", 10, 100),
                                Input.of("radius", "m", 3, 50)),
                        Units.get(""),
                        si -> Turn.spiralLoadFactor(si[0], si[1]),
                        SPIRAL),
                new Quantity(
                        "speed-in-turn",
                        "How fast does the wing fly at the straight flight's angle of attack?",
                        List.of(
                                Input.of("straight-speed", "km/h", 15, 130),
                                Input.of("bank", "°", 0, 70)),
                        Units.get("km/h"),
                        si -> SameAngleTurn.airspeed(si[0], si[1]),
                        SAME_ANGLE),
                new Quantity(
                        "turn-radius-from-straight-speed",
                        "How wide is the circle at the straight flight's angle of attack?",
                        List.of(
                                Input.of("straight-speed", "km/h", 15, 130),
                                Input.of("bank", "°", 1, 70)),
                        Units.get("m"),
                        si -> SameAngleTurn.radius(si[0], si[1]),
                        SAME_ANGLE),
                new Quantity(
                        "turn-time-from-straight-speed",
                        "How long does a circle take at the straight flight's angle of attack?",
                        List.of(
                                Input.of("straight-speed", "km/h", 15, 130),
                                Input.of("bank", "°", 1, 70)),
                        Units.get("s"),
                        si -> SameAngleTurn.time(si[0], si[1]),
                        SAME_ANGLE),
                new Quantity(
                        "sink-rate-in-turn",
                        "How fast does the wing sink at the straight flight's angle of attack?",
                        List.of(
                                Input.of("straight-sink-rate", "m/s", 0.5, 10),
                                Input.of("bank", "°", 0, 70)),
                        Units.get("m/s"),
                        si -> SameAngleTurn.sinkRate(si[0], si[1]),
                        SAME_ANGLE),
                new Quantity(
                        "height-per-turn",
                        "How much height does a circle cost at the same angle of attack?",
                        List.of(
                                Input.of("straight-speed", "km/h", 15, 130),
                                Input.of("straight-sink-rate", "m/s", 0.5, 10),
                                Input.of("bank", "°", 1, 70)),
                        Units.get("m"),
                        si -> SameAngleTurn.heightPerTurn(si[0], si[1], si[2]),
                        SAME_ANGLE));
    }
}
