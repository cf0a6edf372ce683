package org.groundline.diagram;

import static org.groundline.diagram.Kind.input;
import static org.groundline.diagram.Term.ALTITUDE;

import org.groundline.measure.Units;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/// One quantity of the standard atmosphere against altitude, read at one altitude.
///
/// @param unit of the axis and the label
/// @param digits significant digits of the label
/// @param low where the axis of the quantity begins, in its unit
/// @param high where it ends
/// @param step between its numbers
/// @param atAltitude the quantity over altitude, in SI
record AtmosphereProfile(
        Motif motif,
        Term quantity,
        String unit,
        int digits,
        double low,
        double high,
        double step,
        DoubleUnaryOperator atAltitude) {
    private static final double LEFT = 48;
    private static final double RIGHT = 322;
    private static final double TOP = 34;
    private static final double BOTTOM = 226;
    private static final double HIGHEST = 6000; // m
    private static final double SKETCHED_ALTITUDE = 2700; // m
    private static final int CURVE_STEPS = 60;

    Kind kind() {
        return new Kind(
                motif,
                288,
                List.of(input(ALTITUDE, "m", 0, HIGHEST)),
                Set.of(),
                List.of(
                        Derived.of(
                                quantity,
                                unit,
                                digits,
                                Set.of(ALTITUDE),
                                v -> atAltitude.applyAsDouble(v.get(ALTITUDE)))),
                Set.of(),
                this::draw);
    }

    private void draw(Plate plate) {
        var facts = plate.facts();
        var plot = new Plot(new Axis(low, high, LEFT, RIGHT), new Axis(0, HIGHEST, BOTTOM, TOP));
        double altitude = facts.isStem() ? SKETCHED_ALTITUDE : facts.si(ALTITUDE);
        if (facts.isStem()) {
            plate.note(plate.words().notToScale());
        } else {
            plot.numbers(plate, new double[] {step, 2 * step}, new double[] {1000});
        }
        plot.frame(plate);
        plot.titles(plate, plate.words().axis(quantity, unit), plate.words().axis(ALTITUDE, "m"));
        plate.pen("curve", Ink.THICK).polyline(curve(plot));
        read(plate, plot, altitude);
    }

    private void read(Plate plate, Plot plot, double altitude) {
        var point = plot.at(inUnit(altitude), altitude);
        var left = new Point(LEFT, point.y());
        var down = new Point(point.x(), BOTTOM);
        plate.pen(ALTITUDE, Ink.DASHED).line(left, point);
        plate.pen(quantity, Ink.DASHED).line(point, down);
        plate.pen("reading", Ink.THIN).dot(point);
        plate.number(Spots.along(left, point, Spots.UP), ALTITUDE);
        plate.number(Spots.along(point, down), quantity);
    }

    private List<Point> curve(Plot plot) {
        var points = new ArrayList<Point>();
        for (int i = 0; i <= CURVE_STEPS; i++) {
            double altitude = HIGHEST * i / CURVE_STEPS;
            points.add(plot.at(inUnit(altitude), altitude));
        }
        return points;
    }

    private double inUnit(double altitude) {
        return Units.get(unit).fromSi(atAltitude.applyAsDouble(altitude));
    }
}
