package org.groundline.diagram;

import static org.groundline.diagram.Kind.input;
import static org.groundline.diagram.Term.A;
import static org.groundline.diagram.Term.AIR_SINK;
import static org.groundline.diagram.Term.B;
import static org.groundline.diagram.Term.C;
import static org.groundline.diagram.Term.GLIDE_RATIO;
import static org.groundline.diagram.Term.HEADWIND;
import static org.groundline.diagram.Term.MAXIMUM_SPEED;
import static org.groundline.diagram.Term.SINK_RATE;
import static org.groundline.diagram.Term.SPEED_TO_FLY;

import org.groundline.measure.Rounding;
import org.groundline.measure.Unit;
import org.groundline.measure.Units;
import org.groundline.theory.Polar;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/// A speed polar to be read, and for the solution the tangent to it from the origin, which a
/// headwind shifts to the right and sinking air upwards.
final class PolarTangent {
    private static final double LEFT = 42;
    private static final double RIGHT = 322;
    private static final double TOP = 48;
    private static final double BOTTOM = 238;
    private static final double DEEPEST = 12; // (m/s)
    private static final int CURVE_STEPS = 60;
    private static final double TOLD_EVERY = 5; // km/h
    private static final Unit KMH = Units.get("km/h");
    private static final Unit MS = Units.get("m/s");
    private static final Set<Term> POLAR = Set.of(A, B, C, MAXIMUM_SPEED);

    private final Plate plate;
    private final Facts facts;
    private final Polar polar;

    private PolarTangent(Plate plate) {
        this.plate = plate;
        this.facts = plate.facts();
        this.polar = new Polar(facts.si(A), facts.si(B), facts.si(C));
    }

    static Kind kind() {
        return new Kind(
                Motif.POLAR_TANGENT,
                284,
                List.of(
                        input(A, "s/m", 0.001, 0.1),
                        input(B, "", -2, -0.01),
                        input(C, "m/s", 0.5, 10),
                        input(MAXIMUM_SPEED, "km/h", 25, 130),
                        input(HEADWIND, "km/h", -40, 40),
                        input(AIR_SINK, "m/s", -2, 5)),
                Set.of(HEADWIND, AIR_SINK),
                List.of(
                        Derived.of(SPEED_TO_FLY, "km/h", 3, POLAR, PolarTangent::speedToFly),
                        Derived.of(
                                SINK_RATE, "m/s", 3, POLAR, v -> polar(v).sinkRate(speedToFly(v))),
                        Derived.of(
                                GLIDE_RATIO,
                                "",
                                3,
                                POLAR,
                                v -> polar(v).bestRatioOverGround(headwind(v), airSink(v)))),
                Set.of(A, B, C, MAXIMUM_SPEED),
                plate -> new PolarTangent(plate).draw());
    }

    private static Polar polar(Values values) {
        var polar = new Polar(values.get(A), values.get(B), values.get(C));
        double deepest = polar.sinkRate(values.get(MAXIMUM_SPEED));
        if (deepest > DEEPEST) {
            throw new IllegalArgumentException(
                    "a polar that sinks %s m/s at its highest speed cannot be read, only one up to %s m/s"
                            .formatted(deepest, DEEPEST));
        }
        return polar;
    }

    private static double headwind(Values values) {
        return values.has(HEADWIND) ? values.get(HEADWIND) : 0;
    }

    private static double airSink(Values values) {
        return values.has(AIR_SINK) ? values.get(AIR_SINK) : 0;
    }

    private static double speedToFly(Values values) {
        double speed = polar(values).speedToFly(headwind(values), airSink(values));
        if (speed > values.get(MAXIMUM_SPEED)) {
            throw new IllegalArgumentException(
                    "the tangent touches the polar at %s m/s, beyond its highest speed, %s m/s"
                            .formatted(speed, values.get(MAXIMUM_SPEED)));
        }
        return speed;
    }

    private void draw() {
        var plot = plot();
        plot.numbers(plate, new double[] {10, 20, 50}, new double[] {0.5, 1, 2, 5});
        plot.frame(plate);
        plot.ticks(plate, plot.across().step(5, 2, 5, 10), plot.up().step(5, 0.1, 0.2, 0.5, 1));
        plot.titles(plate, plate.words().airspeedAxis(), plate.words().sinkAxis());
        plate.pen("polar", Ink.THICK).polyline(curve(plot));
        plate.remark(plate.words().polarPoints(points()));
        if (facts.isStem()) {
            question();
        } else {
            tangent(plot);
        }
    }

    /// For a stem the axes hold the curve and the origin. The shifted origin is for the student to
    /// find; only where it falls outside does a wind that is told widen them.
    private Plot plot() {
        double slowest = Math.min(0, KMH.fromSi(known(HEADWIND)));
        double fastest = KMH.fromSi(facts.si(MAXIMUM_SPEED));
        double highest = Math.min(0, -known(AIR_SINK));
        double deepest = polar.sinkRate(facts.si(MAXIMUM_SPEED));
        return new Plot(
                new Axis(10 * Math.floor(slowest / 10), 10 * Math.ceil(fastest / 10), LEFT, RIGHT),
                new Axis(
                        0.5 * Math.floor(highest / 0.5),
                        0.5 * Math.ceil(deepest / 0.5),
                        TOP,
                        BOTTOM));
    }

    private double known(Term term) {
        return facts.isKnown(term) ? facts.si(term) : 0;
    }

    private List<Point> curve(Plot plot) {
        var points = new ArrayList<Point>();
        double slowest = polar.minimumSinkSpeed();
        for (int i = 0; i <= CURVE_STEPS; i++) {
            double speed = slowest + (facts.si(MAXIMUM_SPEED) - slowest) * i / CURVE_STEPS;
            points.add(plot.at(KMH.fromSi(speed), polar.sinkRate(speed)));
        }
        return points;
    }

    /// The curve in words: speeds at which it can be read, and the sink rate there.
    private List<DiagramWords.PolarPoint> points() {
        var points = new ArrayList<DiagramWords.PolarPoint>();
        double fastest = KMH.fromSi(facts.si(MAXIMUM_SPEED));
        double first = Math.ceil(KMH.fromSi(polar.minimumSinkSpeed()) / TOLD_EVERY);
        for (double speed = first * TOLD_EVERY; speed <= fastest; speed += TOLD_EVERY) {
            double sinkRate = polar.sinkRate(KMH.toSi(speed));
            points.add(
                    new DiagramWords.PolarPoint(
                            KMH.print(Rounding.significant(speed, 3)),
                            MS.print(Rounding.significant(sinkRate, 3))));
        }
        return points;
    }

    private void question() {
        var free = Spots.inside(new Box(LEFT + 10, TOP + 9, RIGHT, BOTTOM - 12));
        for (Term term : List.of(HEADWIND, AIR_SINK, SPEED_TO_FLY, SINK_RATE, GLIDE_RATIO)) {
            plate.labelSize(free, term, name(term));
        }
    }

    private void tangent(Plot plot) {
        double wind = KMH.fromSi(known(HEADWIND));
        double air = known(AIR_SINK);
        var zero = plot.at(0, 0);
        var origin = plot.at(wind, -air);
        var touch = plot.at(KMH.fromSi(facts.si(SPEED_TO_FLY)), facts.si(SINK_RATE));
        shift(HEADWIND, zero, plot.at(wind, 0));
        shift(AIR_SINK, plot.at(wind, 0), origin);
        plate.pen("zero", Ink.THIN).line(new Point(LEFT, zero.y()), new Point(RIGHT, zero.y()));
        plate.pen("tangent", Ink.THIN).line(origin, beyond(origin, touch));
        read(plot, touch);
        plate.label(Spots.along(origin, touch), GLIDE_RATIO);
    }

    /// A little past the touching point, but not out of the plot.
    private static Point beyond(Point origin, Point touch) {
        double across = (RIGHT - origin.x()) / (touch.x() - origin.x());
        double down = (BOTTOM - origin.y()) / (touch.y() - origin.y());
        return origin.towards(touch, Math.min(1.25, Math.min(across, down)));
    }

    private void shift(Term term, Point from, Point to) {
        if (from.distanceTo(to) > 0) {
            plate.pen(term, Ink.THICK).arrow(from, to);
            plate.labelSize(Spots.along(from, to), term, name(term));
        }
    }

    private void read(Plot plot, Point touch) {
        var down = new Point(touch.x(), BOTTOM);
        var left = new Point(plot.across().start(), touch.y());
        plate.pen(SPEED_TO_FLY, Ink.DASHED).line(touch, down);
        plate.labelSize(Spots.along(touch, down), SPEED_TO_FLY, name(SPEED_TO_FLY));
        if (facts.isLabelled(SINK_RATE)) {
            plate.pen(SINK_RATE, Ink.DASHED).line(touch, left);
            plate.label(Spots.along(touch, left), SINK_RATE);
        }
        plate.pen("touching-point", Ink.THIN).dot(touch);
    }

    private String name(Term term) {
        if (term == SPEED_TO_FLY && !facts.has(HEADWIND) && !facts.has(AIR_SINK)) {
            return plate.words().bestGlide();
        }
        boolean reversed = facts.isKnown(term) && facts.si(term) < 0;
        if (term == HEADWIND && reversed) {
            return plate.words().tailwind();
        }
        return term == AIR_SINK && reversed ? plate.words().risingAir() : plate.words().term(term);
    }
}
