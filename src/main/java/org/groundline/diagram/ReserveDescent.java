package org.groundline.diagram;

import static org.groundline.diagram.Kind.input;
import static org.groundline.diagram.Term.EQUAL_JUMP_HEIGHT;
import static org.groundline.diagram.Term.SINK_RATE;

import org.groundline.theory.Reserve;

import java.util.List;
import java.util.Set;

/// A descent under the reserve, and beside it the jump that lands as hard.
final class ReserveDescent {
    private static final double GROUND = 232;
    private static final double PERSON = 1.75; // (m)
    private static final double LARGEST_METRE = 32;
    private static final double HIGHEST = 150;
    private static final double SKETCHED_JUMP = 2; // (m)

    private final Plate plate;

    private ReserveDescent(Plate plate) {
        this.plate = plate;
    }

    static Kind kind() {
        return new Kind(
                Motif.RESERVE_DESCENT,
                268,
                List.of(input(SINK_RATE, "m/s", 2, 10)),
                Set.of(),
                List.of(
                        Derived.of(
                                EQUAL_JUMP_HEIGHT,
                                "m",
                                3,
                                Set.of(SINK_RATE),
                                v -> Reserve.equalJumpHeight(v.get(SINK_RATE)))),
                Set.of(),
                plate -> new ReserveDescent(plate).draw());
    }

    private void draw() {
        boolean stem = plate.facts().isStem();
        double jump = stem ? SKETCHED_JUMP : plate.facts().si(EQUAL_JUMP_HEIGHT);
        double metre = Math.min(LARGEST_METRE, HIGHEST / jump);
        plate.note(stem ? plate.words().notToScale() : plate.words().personGivesScale());
        plate.pen("ground", Ink.THICK).ground(6, Sheet.WIDTH - 6, GROUND);
        descent(metre);
        jump(jump * metre, metre);
    }

    private void descent(double metre) {
        var feet = new Point(72, GROUND - 60);
        double shoulders = feet.y() - metre * PERSON * 0.82;
        var pen = plate.pen("canopy", Ink.THIN);
        var rim = Pen.arcPoints(new Point(72, 70), 54, Math.PI * 1.03, Math.PI * 1.97);
        plate.pen("canopy", Ink.THICK).polyline(rim);
        plate.pen("canopy", Ink.THIN).line(rim.getFirst(), rim.getLast());
        pen.strokes(
                List.of(
                        new Segment(rim.getFirst(), new Point(72, shoulders)),
                        new Segment(rim.get(rim.size() / 3), new Point(72, shoulders)),
                        new Segment(rim.get(rim.size() * 2 / 3), new Point(72, shoulders)),
                        new Segment(rim.getLast(), new Point(72, shoulders))));
        Silhouettes.person(plate.pen("pilot", Ink.THIN), feet, metre * PERSON);
        var from = new Point(118, GROUND - 92);
        var to = from.plus(0, 64);
        plate.pen(SINK_RATE, Ink.THICK).arrow(from, to);
        plate.label(Spots.along(from, to, Spots.RIGHT), SINK_RATE);
    }

    private void jump(double height, double metre) {
        double left = 262;
        double right = Sheet.WIDTH - 14;
        double top = GROUND - height;
        var edge = new Point(left, top);
        plate.pen("platform", Ink.THICK)
                .polyline(List.of(new Point(right, top), edge, new Point(left, GROUND)));
        Silhouettes.person(
                plate.pen("jumper", Ink.THIN), new Point(left + 16, top), metre * PERSON);
        var foot = new Point(left - 12, GROUND);
        plate.pen(EQUAL_JUMP_HEIGHT, Ink.THIN).span(foot, new Point(foot.x(), top));
        plate.label(Spots.along(foot, new Point(foot.x(), top), Spots.LEFT), EQUAL_JUMP_HEIGHT);
    }
}
