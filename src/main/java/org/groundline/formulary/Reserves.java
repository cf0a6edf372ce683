package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Reserve;

import java.util.List;

/// The reserve parachute: descent, size, height used, and the landing.
final class Reserves {
    private static final String DESCENT = "derived from the equilibrium of weight and drag";
    private static final String FALL = "derived from free fall";
    private static final String HEIGHT =
            "derived; all times and losses are given, none is from a source";

    private Reserves() {}

    static List<Quantity> quantities() {
        return List.of(
                new Quantity(
                        "reserve-sink-rate",
                        "How fast does one come down under the reserve?",
                        List.of(
                                Input.of("all-up-mass", "kg", 40, 250),
                                Input.of("area", "m²", 10, 80),
                                Input.of("drag-coefficient", "", 0.5, 2.5),
                                Input.of("density", "kg/m³", 0.5, 1.4)),
                        Units.get("m/s"),
                        si -> Reserve.sinkRate(si[0], si[1], si[2], si[3]),
                        DESCENT),
                new Quantity(
                        "reserve-area-needed",
                        "How large a reserve brings one down at this rate?",
                        List.of(
                                Input.of("all-up-mass", "kg", 40, 250),
                                Input.of("sink-rate", "m/s", 2, 12),
                                Input.of("drag-coefficient", "", 0.5, 2.5),
                                Input.of("density", "kg/m³", 0.5, 1.4)),
                        Units.get("m²"),
                        si -> Reserve.areaNeeded(si[0], si[1], si[2], si[3]),
                        DESCENT),
                new Quantity(
                        "reserve-drag-coefficient",
                        "Which drag coefficient does a measured descent under the reserve show?",
                        List.of(
                                Input.of("all-up-mass", "kg", 40, 250),
                                Input.of("sink-rate", "m/s", 2, 12),
                                Input.of("area", "m²", 10, 80),
                                Input.of("density", "kg/m³", 0.5, 1.4)),
                        Units.get(""),
                        si -> Reserve.dragCoefficient(si[0], si[1], si[2], si[3]),
                        DESCENT),
                new Quantity(
                        "equal-jump-height",
                        "From how high would one jump to land as fast?",
                        List.of(Input.of("sink-rate", "m/s", 0.5, 12)),
                        Units.get("m"),
                        si -> Reserve.equalJumpHeight(si[0]),
                        FALL),
                new Quantity(
                        "speed-after-fall",
                        "How fast does one land after falling from this height?",
                        List.of(Input.of("height", "m", 0, 10)),
                        Units.get("m/s"),
                        si -> Reserve.speedAfterFall(si[0]),
                        FALL),
                new Quantity(
                        "impact-energy",
                        "How much energy does the landing have to take?",
                        List.of(
                                Input.of("mass", "kg", 40, 250),
                                Input.of("sink-rate", "m/s", 0.5, 12)),
                        Units.get("J"),
                        si -> Reserve.impactEnergy(si[0], si[1]),
                        FALL),
                new Quantity(
                        "reserve-height-used",
                        "How much height is gone until the reserve is open?",
                        List.of(
                                Input.of("sink-rate", "m/s", 1, 40),
                                Input.of("decision-time", "s", 0, 10),
                                Input.of("throw-time", "s", 0, 10),
                                Input.of("opening-time", "s", 0, 10)),
                        Units.get("m"),
                        si -> Reserve.heightUsed(si[0], si[1], si[2], si[3]),
                        HEIGHT),
                new Quantity(
                        "reserve-height-used-with-loss",
                        "How much height is gone, where the opening is told as a loss of height?",
                        List.of(
                                Input.of("sink-rate", "m/s", 1, 40),
                                Input.of("decision-time", "s", 0, 10),
                                Input.of("opening-loss", "m", 0, 200)),
                        Units.get("m"),
                        si -> Reserve.heightUsedWithLoss(si[0], si[1], si[2]),
                        HEIGHT));
    }
}
