package org.groundline.diagram;

import static org.groundline.diagram.Kind.input;
import static org.groundline.diagram.Term.AIRSPEED;
import static org.groundline.diagram.Term.COURSE;
import static org.groundline.diagram.Term.GROUND_SPEED;
import static org.groundline.diagram.Term.HEADING;
import static org.groundline.diagram.Term.WIND_CORRECTION_ANGLE;
import static org.groundline.diagram.Term.WIND_FROM;
import static org.groundline.diagram.Term.WIND_SPEED;

import org.groundline.theory.Wind;

import java.util.List;
import java.util.Set;

/// Through the air along the heading, then with the wind: the way over the ground follows the
/// course. North is up.
final class WindTriangle {
    private static final Box FRAME = new Box(84, 52, 258, 226);
    private static final double SKETCHED = 84;
    private static final double NARROW = Math.toRadians(4);
    private static final double APART = 9;
    private static final double ASIDE = 46;
    private static final double ARC = 40;
    private static final Set<Term> ALL = Set.of(COURSE, AIRSPEED, WIND_FROM, WIND_SPEED);

    private final Plate plate;
    private final Facts facts;

    private WindTriangle(Plate plate) {
        this.plate = plate;
        this.facts = plate.facts();
    }

    static Kind kind() {
        return new Kind(
                Motif.WIND_TRIANGLE,
                290,
                List.of(
                        input(COURSE, "°", 0, 360),
                        input(AIRSPEED, "km/h", 20, 100),
                        input(WIND_FROM, "°", 0, 360),
                        input(WIND_SPEED, "km/h", 1, 60)),
                Set.of(),
                List.of(
                        Derived.of(HEADING, "°", 3, ALL, WindTriangle::heading),
                        Derived.of(
                                WIND_CORRECTION_ANGLE,
                                "°",
                                3,
                                ALL,
                                v ->
                                        Math.abs(
                                                Wind.correctionAngle(
                                                        v.get(AIRSPEED),
                                                        v.get(WIND_SPEED),
                                                        angle(v)))),
                        Derived.of(
                                GROUND_SPEED,
                                "km/h",
                                3,
                                ALL,
                                v ->
                                        Wind.groundSpeed(
                                                v.get(AIRSPEED), v.get(WIND_SPEED), angle(v)))),
                Set.of(),
                plate -> new WindTriangle(plate).draw());
    }

    private static double heading(Values values) {
        return Wind.heading(
                values.get(AIRSPEED),
                values.get(COURSE),
                values.get(WIND_FROM),
                values.get(WIND_SPEED));
    }

    private static double angle(Values values) {
        return Wind.angle(values.get(COURSE), values.get(WIND_FROM));
    }

    private void draw() {
        north();
        if (facts.isStem()) {
            plate.note(plate.words().notToScale());
            directions();
        } else {
            plate.note(plate.words().toScale());
            triangle();
        }
    }

    private void north() {
        var foot = new Point(22, 62);
        plate.pen("north", Ink.THIN).arrow(foot, foot.plus(0, -36));
        plate.fixed(plate.words().north(), foot.plus(0, -36), Spots.UP, 2);
    }

    /// For a stem only what is told has a direction, and nothing has a length.
    private void directions() {
        var start = new Point(170, 150);
        plate.pen("glider", Ink.THIN).dot(start);
        ray(COURSE, start, COURSE, GROUND_SPEED);
        ray(HEADING, start, HEADING, AIRSPEED, WIND_CORRECTION_ANGLE);
        wind(start);
    }

    private void ray(Term direction, Point start, Term... labels) {
        if (facts.isKnown(direction)) {
            var tip = start.plus(compass(facts.si(direction)), SKETCHED);
            plate.pen(direction, direction == COURSE ? Ink.THIN : Ink.THICK).arrow(start, tip);
            plate.label(Spots.along(start, tip), labels);
        } else {
            plate.label(Spots.inside(new Box(4, 232, 200, 250)), labels);
        }
    }

    /// Beside the rays, so that it hides none of them.
    private void wind(Point start) {
        if (facts.isKnown(WIND_FROM)) {
            var way = compass(facts.si(WIND_FROM) + Math.PI);
            var middle = new Point(296, 56);
            var tip = middle.plus(way, 30);
            plate.pen(WIND_SPEED, Ink.THICK).arrow(middle.plus(way, -30), tip);
            plate.label(Spots.around(middle.plus(-24, 0), Spots.LEFT), WIND_FROM, WIND_SPEED);
        } else {
            plate.label(Spots.inside(new Box(150, 20, 334, 60)), WIND_FROM, WIND_SPEED);
        }
    }

    private void triangle() {
        var air = way(HEADING, AIRSPEED);
        var ground = way(COURSE, GROUND_SPEED);
        double scale = scale(air, ground);
        var start = start(air, ground, scale);
        var apart = sideways(ground);
        var turn = start.plus(air, scale);
        var end = start.plus(ground, scale);
        arrow(HEADING, AIRSPEED, Ink.THICK, start, turn);
        arrow(WIND_FROM, WIND_SPEED, Ink.THICK, turn.plus(apart, APART), end.plus(apart, APART));
        arrow(
                COURSE,
                GROUND_SPEED,
                Ink.THIN,
                start.plus(apart, 2 * APART),
                end.plus(apart, 2 * APART));
        crab(start);
        scaleBar(scale);
    }

    /// As a way of the picture, one unit for one metre a second.
    private Point way(Term direction, Term speed) {
        var unit = compass(facts.si(direction));
        return new Point(unit.x() * facts.si(speed), unit.y() * facts.si(speed));
    }

    private static double scale(Point air, Point ground) {
        double wide = spread(air.x(), ground.x());
        double tall = spread(air.y(), ground.y());
        return Math.min(
                (FRAME.right() - FRAME.left()) / wide, (FRAME.bottom() - FRAME.top()) / tall);
    }

    private static double spread(double one, double other) {
        return Math.max(0, Math.max(one, other)) - Math.min(0, Math.min(one, other)) + 1e-9;
    }

    /// Where to start so that the triangle stands in the middle of the frame, but away from the
    /// side on which the wind has its label.
    private static Point start(Point air, Point ground, double scale) {
        double x = middle(air.x(), ground.x());
        double y = middle(air.y(), ground.y());
        double aside = Math.signum(x - (air.x() + ground.x()) / 2) * ASIDE;
        return new Point(
                (FRAME.left() + FRAME.right()) / 2 - x * scale + aside,
                (FRAME.top() + FRAME.bottom()) / 2 - y * scale);
    }

    /// The middle between the lowest and the highest of zero and two values.
    private static double middle(double one, double other) {
        return (Math.max(0, Math.max(one, other)) + Math.min(0, Math.min(one, other))) / 2;
    }

    /// With the wind along the course the three arrows would hide each other; they are moved apart,
    /// each as long as before.
    private Point sideways(Point ground) {
        if (facts.si(WIND_CORRECTION_ANGLE) >= NARROW) {
            return new Point(0, 0);
        }
        plate.remark(plate.words().sideBySide());
        return ground.unit().turned();
    }

    private void arrow(Term direction, Term speed, Ink ink, Point from, Point to) {
        boolean asked = facts.isAsked(direction) || facts.isAsked(speed);
        plate.pen(speed.id(), ink.asked(asked)).arrow(from, to);
        plate.label(Spots.along(from, to), direction, speed);
    }

    private void crab(Point start) {
        if (facts.isLabelled(WIND_CORRECTION_ANGLE)) {
            double course = onPaper(facts.si(COURSE));
            double crab = Math.IEEEremainder(facts.si(HEADING) - facts.si(COURSE), 2 * Math.PI);
            plate.pen(WIND_CORRECTION_ANGLE, Ink.THIN).arc(start, ARC, course, course + crab);
            plate.label(Spots.around(start), WIND_CORRECTION_ANGLE);
        }
    }

    private void scaleBar(double scale) {
        double ten = scale * 10 / 3.6;
        var right = new Point(Sheet.WIDTH - 8, plate.height() - 10);
        plate.pen("scale", Ink.THIN).span(right.plus(-ten, 0), right);
        plate.remark(plate.words().barShows(plate.words().tenKilometresAnHour()));
        plate.fixed(plate.words().tenKilometresAnHour(), right.plus(-ten, 0), Spots.LEFT, 6);
    }

    private static Point compass(double direction) {
        return Point.direction(onPaper(direction));
    }

    private static double onPaper(double direction) {
        return direction - Math.PI / 2;
    }
}
