package org.groundline.diagram;

import static org.groundline.diagram.Kind.input;
import static org.groundline.diagram.Term.AIRSPEED;
import static org.groundline.diagram.Term.BANK;
import static org.groundline.diagram.Term.CIRCLE_TIME;
import static org.groundline.diagram.Term.DRIFT;
import static org.groundline.diagram.Term.RADIUS;
import static org.groundline.diagram.Term.WIND_SPEED;

import org.groundline.theory.Turn;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/// A full circle from above; with a wind, the path over the ground and how far the circle drifts.
final class CircleFromAbove {
    private static final double MIDDLE_Y = 138;
    private static final double LARGEST = 92;
    private static final double ROOM = 316;
    private static final double LONGEST_ARROW = 70;
    private static final int STEPS = 60;

    /// Wind over airspeed in a sketch.
    private static final double SKETCHED_WIND = 0.3;

    private final Plate plate;
    private final Facts facts;

    private CircleFromAbove(Plate plate) {
        this.plate = plate;
        this.facts = plate.facts();
    }

    static Kind kind() {
        return new Kind(
                Motif.CIRCLE_FROM_ABOVE,
                286,
                List.of(
                        input(AIRSPEED, "km/h", 20, 100),
                        input(BANK, "°", 5, 60),
                        input(WIND_SPEED, "km/h", 1, 40)),
                Set.of(WIND_SPEED),
                List.of(
                        Derived.of(
                                RADIUS,
                                "m",
                                3,
                                Set.of(AIRSPEED, BANK),
                                v -> Turn.radius(v.get(AIRSPEED), v.get(BANK))),
                        Derived.of(
                                CIRCLE_TIME, "s", 3, Set.of(AIRSPEED, BANK), CircleFromAbove::time),
                        Derived.of(
                                DRIFT,
                                "m",
                                3,
                                Set.of(AIRSPEED, BANK, WIND_SPEED),
                                v -> v.get(WIND_SPEED) * time(v))),
                Set.of(),
                plate -> new CircleFromAbove(plate).draw());
    }

    private static double time(Values values) {
        return Turn.time(values.get(AIRSPEED), values.get(BANK));
    }

    private void draw() {
        plate.note(facts.isStem() ? plate.words().notToScale() : plate.words().toScale());
        double wind = facts.has(WIND_SPEED) ? windOverAirspeed() : 0;
        double drift = 2 * Math.PI * wind;
        double arrow = arrowLength(AIRSPEED);
        double radius =
                Math.min(LARGEST, Math.min(ROOM / (2 + drift), (ROOM - arrow) / (1 + drift)));
        double left = Math.max(radius, arrow);
        double width = left + radius * (1 + drift);
        var middle = new Point((Sheet.WIDTH - width) / 2 + left, MIDDLE_Y);
        plate.pen("circle", facts.has(WIND_SPEED) ? Ink.DASHED : Ink.THICK).circle(middle, radius);
        radius(middle, radius);
        airspeed(middle.plus(0, radius));
        if (facts.has(WIND_SPEED)) {
            drifted(middle, radius, wind);
            wind();
        }
        plate.label(Spots.inside(new Box(4, 12, 120, 40)), BANK, CIRCLE_TIME);
    }

    private double windOverAirspeed() {
        if (facts.isStem()) {
            return SKETCHED_WIND;
        }
        return facts.si(WIND_SPEED) / facts.si(AIRSPEED);
    }

    /// Clockwise from the lowest point of the picture, carried to the right.
    private void drifted(Point middle, double radius, double wind) {
        var path = new ArrayList<Point>();
        for (int i = 0; i <= STEPS; i++) {
            double angle = 2 * Math.PI * i / STEPS;
            path.add(
                    middle.plus(Point.direction(angle + Math.PI / 2), radius)
                            .plus(radius * wind * angle, 0));
        }
        plate.pen("ground-path", Ink.THICK).polyline(path);
        var start = path.getFirst();
        var end = path.getLast();
        plate.pen(DRIFT, Ink.THIN).span(start, end);
        plate.label(Spots.along(start, end, Spots.DOWN), DRIFT);
    }

    private void radius(Point middle, double radius) {
        var edge = middle.plus(-radius, 0);
        plate.pen("middle", Ink.THIN).dot(middle);
        plate.pen(RADIUS, Ink.THIN).arrow(middle, edge);
        plate.label(Spots.along(middle, edge, Spots.UP), RADIUS);
    }

    /// Along the circle at its lowest point, where the wing flies to the left.
    private void airspeed(Point wing) {
        var tip = wing.plus(-arrowLength(AIRSPEED), 0);
        plate.pen(AIRSPEED, Ink.THICK).arrow(wing, tip);
        plate.pen("wing", Ink.THICK)
                .polyline(
                        List.of(
                                wing.plus(6, -15),
                                wing.plus(0, -8),
                                wing,
                                wing.plus(0, 8),
                                wing.plus(6, 15)));
        plate.label(Spots.along(wing, tip, Spots.DOWN), AIRSPEED);
    }

    private void wind() {
        var to = new Point(Sheet.WIDTH - 16, 22);
        plate.pen(WIND_SPEED, Ink.THICK).arrow(to.plus(-arrowLength(WIND_SPEED), 0), to);
        plate.label(Spots.along(to.plus(-LONGEST_ARROW, 0), to, Spots.DOWN), WIND_SPEED);
    }

    private double arrowLength(Term term) {
        if (facts.isStem()) {
            return term == AIRSPEED ? LONGEST_ARROW : LONGEST_ARROW * SKETCHED_WIND;
        }
        double wind = facts.has(WIND_SPEED) ? facts.si(WIND_SPEED) : 0;
        return LONGEST_ARROW * facts.si(term) / Math.max(wind, facts.si(AIRSPEED));
    }
}
