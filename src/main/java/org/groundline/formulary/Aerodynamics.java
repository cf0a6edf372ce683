package org.groundline.formulary;

import org.groundline.measure.Units;
import org.groundline.theory.Forces;
import org.groundline.theory.Lines;

import java.util.List;

/// Lift, drag and weight, their coefficients, angles, pressure, and the load on the lines.
final class Aerodynamics {
    private static final String BALANCE =
            "NASA Glenn Research Center, web page on the forces on a glider; "
                    + "FAA-H-8083-13B, Glider Flying Handbook, 2024, page 3-5";
    private static final String DEFINITION = "textbook definition, from memory";
    private static final String STALL =
            "FAA-H-8083-13B, Glider Flying Handbook, 2024, page 3-14; the sum of angles derived";
    private static final String LINES =
            "EN 926-1 as an equipment maker's article gives it, secondary";
    private static final String LOAD = "derived from weight and load factor";

    private Aerodynamics() {}

    static List<Quantity> quantities() {
        return List.of(
                new Quantity(
                        "weight",
                        "How heavy is this mass?",
                        List.of(Input.of("mass", "kg", 1, 500)),
                        Units.get("N"),
                        si -> Forces.weight(si[0]),
                        DEFINITION),
                new Quantity(
                        "lift-in-glide",
                        "How much lift carries a steady glide?",
                        List.of(
                                Input.of("all-up-mass", "kg", 40, 250),
                                Input.of("glide-ratio", "", 1, 60)),
                        Units.get("N"),
                        si -> Forces.liftInGlide(si[0], si[1]),
                        BALANCE),
                new Quantity(
                        "drag-in-glide",
                        "How much drag brakes a steady glide?",
                        List.of(
                                Input.of("all-up-mass", "kg", 40, 250),
                                Input.of("glide-ratio", "", 1, 60)),
                        Units.get("N"),
                        si -> Forces.dragInGlide(si[0], si[1]),
                        BALANCE),
                new Quantity(
                        "lift",
                        "How large is the lift with this coefficient?",
                        List.of(
                                Input.of("lift-coefficient", "", 0.05, 3),
                                Input.of("area", "m²", 8, 45),
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("density", "kg/m³", 0.5, 1.4)),
                        Units.get("N"),
                        si -> Forces.force(si[0], si[1], si[2], si[3]),
                        DEFINITION),
                new Quantity(
                        "drag",
                        "How large is the drag with this coefficient?",
                        List.of(
                                Input.of("drag-coefficient", "", 0.005, 2.5),
                                Input.of("area", "m²", 8, 45),
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("density", "kg/m³", 0.5, 1.4)),
                        Units.get("N"),
                        si -> Forces.force(si[0], si[1], si[2], si[3]),
                        DEFINITION),
                new Quantity(
                        "lift-coefficient",
                        "Which coefficient makes this lift?",
                        List.of(
                                Input.of("lift", "N", 100, 10000),
                                Input.of("area", "m²", 8, 45),
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("density", "kg/m³", 0.5, 1.4)),
                        Units.get(""),
                        si -> Forces.coefficient(si[0], si[1], si[2], si[3]),
                        DEFINITION),
                new Quantity(
                        "drag-coefficient",
                        "Which coefficient makes this drag?",
                        List.of(
                                Input.of("drag", "N", 5, 2000),
                                Input.of("area", "m²", 8, 45),
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("density", "kg/m³", 0.5, 1.4)),
                        Units.get(""),
                        si -> Forces.coefficient(si[0], si[1], si[2], si[3]),
                        DEFINITION),
                new Quantity(
                        "lift-coefficient-in-glide",
                        "Which lift coefficient does a wing have in a steady glide?",
                        List.of(
                                Input.of("all-up-mass", "kg", 40, 250),
                                Input.of("area", "m²", 8, 45),
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("glide-ratio", "", 1, 60),
                                Input.of("density", "kg/m³", 0.5, 1.4)),
                        Units.get(""),
                        si ->
                                Forces.coefficient(
                                        Forces.liftInGlide(si[0], si[3]), si[1], si[2], si[4]),
                        BALANCE),
                new Quantity(
                        "drag-coefficient-in-glide",
                        "Which drag coefficient do wing and pilot have in a steady glide?",
                        List.of(
                                Input.of("all-up-mass", "kg", 40, 250),
                                Input.of("area", "m²", 8, 45),
                                Input.of("airspeed", "km/h", 15, 130),
                                Input.of("glide-ratio", "", 1, 60),
                                Input.of("density", "kg/m³", 0.5, 1.4)),
                        Units.get(""),
                        si ->
                                Forces.coefficient(
                                        Forces.dragInGlide(si[0], si[3]), si[1], si[2], si[4]),
                        BALANCE),
                new Quantity(
                        "lift-to-drag-ratio",
                        "How many metres forward for one down does this lift and drag make?",
                        List.of(Input.of("lift", "N", 100, 10000), Input.of("drag", "N", 5, 2000)),
                        Units.get(""),
                        si -> Forces.ratio(si[0], si[1]),
                        BALANCE),
                new Quantity(
                        "angle-of-attack",
                        "At which angle does the air meet the chord?",
                        List.of(
                                Input.of("attitude", "°", -45, 45),
                                Input.of("glide-angle", "°", -45, 45)),
                        Units.get("°"),
                        si -> Forces.angleOfAttack(si[0], si[1]),
                        STALL),
                new Quantity(
                        "attitude",
                        "How does the chord lie to the horizon in a glide?",
                        List.of(
                                Input.of("angle-of-attack", "°", -10, 40),
                                Input.of("glide-angle", "°", -45, 45)),
                        Units.get("°"),
                        si -> Forces.attitude(si[0], si[1]),
                        STALL),
                new Quantity(
                        "pressure-at-speed",
                        "What is the pressure where the same air flows faster or slower?",
                        List.of(
                                Input.of("pressure", "hPa", 500, 1100),
                                Input.of("density", "kg/m³", 0.5, 1.4),
                                Input.of("speed", "m/s", 0, 60),
                                Input.of("new-speed", "m/s", 0, 60)),
                        Units.get("hPa"),
                        si -> Forces.pressureAtSpeed(si[0], si[1], si[2], si[3]),
                        DEFINITION),
                new Quantity(
                        "line-load",
                        "Which force do all lines together carry at this load factor?",
                        List.of(
                                Input.of("mass", "kg", 40, 250),
                                Input.of("load-factor", "", 0, 10)),
                        Units.get("N"),
                        si -> Lines.load(si[0], si[1]),
                        LOAD),
                new Quantity(
                        "line-strength-required",
                        "How strong do all lines of one level have to be together, after bending?",
                        List.of(Input.of("maximum-mass", "kg", 40, 300)),
                        Units.get("N"),
                        si -> Lines.strengthRequired(si[0]),
                        LINES));
    }
}
