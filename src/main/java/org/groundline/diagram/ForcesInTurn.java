package org.groundline.diagram;

import static org.groundline.diagram.Kind.input;
import static org.groundline.diagram.Term.BANK;
import static org.groundline.diagram.Term.HORIZONTAL_LIFT;
import static org.groundline.diagram.Term.LIFT;
import static org.groundline.diagram.Term.LOAD_FACTOR;
import static org.groundline.diagram.Term.MASS;
import static org.groundline.diagram.Term.VERTICAL_LIFT;
import static org.groundline.diagram.Term.WEIGHT;

import org.groundline.theory.Forces;
import org.groundline.theory.Turn;

import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/// The forces in a steady turn to the right, from behind: weight, lift along the bank, and its
/// parts upwards (as large as the weight) and inwards.
final class ForcesInTurn {
    private static final double LEFTMOST = 118;
    private static final double MIDDLE_X = 170;
    private static final double ROOM = 206;
    private static final double RIGHTMOST = 150;
    private static final double MIDDLE_Y = 158;
    private static final double LONGEST_WEIGHT = 104;
    private static final double SKETCHED_BANK = Math.toRadians(40);

    private final Plate plate;

    private ForcesInTurn(Plate plate) {
        this.plate = plate;
    }

    static Kind kind() {
        return new Kind(
                Motif.FORCES_IN_TURN,
                308,
                List.of(input(MASS, "kg", 40, 250), input(BANK, "°", 5, 75)),
                Set.of(),
                List.of(
                        force(WEIGHT, v -> Forces.weight(v.get(MASS))),
                        force(VERTICAL_LIFT, v -> Forces.weight(v.get(MASS))),
                        force(LIFT, ForcesInTurn::lift),
                        force(HORIZONTAL_LIFT, v -> lift(v) * StrictMath.sin(v.get(BANK))),
                        Derived.of(
                                LOAD_FACTOR,
                                "",
                                3,
                                Set.of(BANK),
                                v -> Turn.loadFactor(v.get(BANK)))),
                Set.of(),
                plate -> new ForcesInTurn(plate).draw());
    }

    private static Derived force(Term term, ToDoubleFunction<Values> formula) {
        return Derived.of(term, "N", 3, Set.of(MASS, BANK), formula);
    }

    private static double lift(Values values) {
        return Forces.weight(values.get(MASS)) * Turn.loadFactor(values.get(BANK));
    }

    private void draw() {
        boolean stem = plate.facts().isStem();
        double bank = stem ? SKETCHED_BANK : plate.facts().si(BANK);
        plate.note(stem ? plate.words().notToScale() : plate.words().toScale());
        double weight = Math.min(LONGEST_WEIGHT, RIGHTMOST / StrictMath.tan(bank));
        double inwards = weight * StrictMath.tan(bank);
        var pilot = new Point(Math.clamp(ROOM - inwards, LEFTMOST, MIDDLE_X), MIDDLE_Y);
        var lift = pilot.plus(inwards, -weight);
        Silhouettes.fromBehind(
                plate.pen("wing", Ink.THICK),
                plate.pen("wing", Ink.FAINT),
                pilot,
                lift.minus(pilot).unit(),
                62);
        plate.pen("parts", Ink.DASHED)
                .strokes(
                        List.of(
                                new Segment(lift, pilot.plus(0, -weight)),
                                new Segment(lift, new Point(lift.x(), pilot.y()))));
        arrow(WEIGHT, pilot, pilot.plus(0, weight), MASS);
        arrow(VERTICAL_LIFT, pilot, pilot.plus(0, -weight));
        arrow(HORIZONTAL_LIFT, pilot, new Point(lift.x(), pilot.y()));
        plate.pen(LIFT, Ink.THICK).arrow(pilot, lift);
        plate.name(Spots.around(lift, Spots.RIGHT, Spots.UP), LIFT, LOAD_FACTOR);
        bank(pilot, bank, weight);
    }

    private void arrow(Term force, Point from, Point to, Term... beneath) {
        plate.pen(force, Ink.THICK).arrow(from, to);
        plate.name(Spots.around(to, Spots.LEFT, Spots.DOWN), force, beneath);
    }

    /// Between the upright and the lift, which lean apart as much as wing and horizon.
    private void bank(Point pilot, double bank, double weight) {
        double radius = Math.min(34, weight * 0.6);
        double upright = -Math.PI / 2;
        plate.pen(BANK, Ink.THIN).arc(pilot, radius, upright, upright + bank);
        plate.label(
                Spots.around(
                        pilot.plus(Point.direction(upright + bank / 2), radius),
                        Point.direction(upright + bank / 2)),
                BANK);
    }
}
