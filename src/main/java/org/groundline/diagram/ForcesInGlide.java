package org.groundline.diagram;

import static org.groundline.diagram.Kind.input;
import static org.groundline.diagram.Term.DRAG;
import static org.groundline.diagram.Term.GLIDE_ANGLE;
import static org.groundline.diagram.Term.GLIDE_RATIO;
import static org.groundline.diagram.Term.LIFT;
import static org.groundline.diagram.Term.MASS;
import static org.groundline.diagram.Term.WEIGHT;

import org.groundline.theory.Forces;
import org.groundline.theory.Glide;

import java.util.List;
import java.util.Set;

/// Weight, lift and drag on a wing's section in a steady glide to the right: lift square to the
/// path, drag along it, and the two together as long as the weight.
final class ForcesInGlide {
    private static final Point MIDDLE = new Point(150, 150);
    private static final double WEIGHT_LENGTH = 118;
    private static final double CHORD = 84;
    private static final double PATH = 168;
    private static final double ARC = 140;

    /// In a sketch the glide is so steep that each force is seen apart.
    private static final double SKETCHED_ANGLE = Math.toRadians(20);

    private final Plate plate;

    private ForcesInGlide(Plate plate) {
        this.plate = plate;
    }

    static Kind kind() {
        return new Kind(
                Motif.FORCES_IN_GLIDE,
                308,
                List.of(input(MASS, "kg", 40, 250), input(GLIDE_RATIO, "", 2, 20)),
                Set.of(),
                List.of(
                        Derived.of(WEIGHT, "N", 3, Set.of(MASS), v -> Forces.weight(v.get(MASS))),
                        Derived.of(
                                LIFT,
                                "N",
                                3,
                                Set.of(MASS, GLIDE_RATIO),
                                v -> Forces.liftInGlide(v.get(MASS), v.get(GLIDE_RATIO))),
                        Derived.of(
                                DRAG,
                                "N",
                                3,
                                Set.of(MASS, GLIDE_RATIO),
                                v -> Forces.dragInGlide(v.get(MASS), v.get(GLIDE_RATIO))),
                        Derived.of(
                                GLIDE_ANGLE,
                                "°",
                                3,
                                Set.of(GLIDE_RATIO),
                                v -> Glide.angle(v.get(GLIDE_RATIO)))),
                Set.of(),
                plate -> new ForcesInGlide(plate).draw());
    }

    private void draw() {
        boolean stem = plate.facts().isStem();
        double angle = stem ? SKETCHED_ANGLE : plate.facts().si(GLIDE_ANGLE);
        plate.note(stem ? plate.words().notToScale() : plate.words().toScale());
        path(angle);
        Silhouettes.section(plate.pen("wing", Ink.THIN), MIDDLE, CHORD, angle);
        forces(angle);
    }

    private void path(double angle) {
        var horizon = MIDDLE.plus(PATH, 0);
        var ahead = MIDDLE.plus(Point.direction(angle), PATH);
        plate.pen("horizon", Ink.DASHED).line(MIDDLE, horizon);
        plate.pen("path", Ink.THIN).line(MIDDLE, ahead);
        plate.pen(GLIDE_ANGLE, Ink.THIN).arc(MIDDLE, ARC, 0, angle);
        plate.write(Spots.along(MIDDLE, ahead), plate.words().flightPath());
        plate.label(Spots.along(MIDDLE, horizon), GLIDE_ANGLE, GLIDE_RATIO);
    }

    /// Weight downwards; drag back along the path, lift square to it, both as parts of what holds
    /// the weight.
    private void forces(double angle) {
        var lift = MIDDLE.plus(Point.direction(angle - Math.PI / 2), liftLength(angle));
        var drag = MIDDLE.plus(Point.direction(angle), -dragLength(angle));
        var total = MIDDLE.plus(0, -WEIGHT_LENGTH);
        plate.pen("parts", Ink.DASHED)
                .strokes(List.of(new Segment(lift, total), new Segment(drag, total)));
        plate.pen("total-force", Ink.THIN).arrow(MIDDLE, total);
        plate.write(Spots.around(total, Spots.LEFT, Spots.UP), plate.words().totalForce());
        arrow(WEIGHT, MIDDLE.plus(0, WEIGHT_LENGTH), MASS);
        arrow(LIFT, lift);
        plate.pen(DRAG, Ink.THICK).arrow(MIDDLE, drag);
        double behind = Math.max(dragLength(angle), CHORD * 0.55);
        plate.name(Spots.around(MIDDLE.plus(Point.direction(angle), -behind), Spots.LEFT), DRAG);
    }

    private void arrow(Term force, Point tip, Term... beneath) {
        plate.pen(force, Ink.THICK).arrow(MIDDLE, tip);
        plate.name(Spots.around(tip, Spots.RIGHT, Spots.LEFT), force, beneath);
    }

    private static double liftLength(double angle) {
        return WEIGHT_LENGTH * Math.cos(angle);
    }

    private static double dragLength(double angle) {
        return WEIGHT_LENGTH * Math.sin(angle);
    }
}
