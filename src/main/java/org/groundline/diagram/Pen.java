package org.groundline.diagram;

import java.util.ArrayList;
import java.util.List;

/// Draws one part of the picture in one ink.
///
/// @param part its name in the file, so that it can be found again
record Pen(Sheet sheet, String part, Ink ink) {
    private static final double HEAD = 9;
    private static final double HEAD_OF_SHORT = 0.7;
    private static final double HALF_WIDTH = 0.38;
    private static final double HATCH_STEP = 9;
    private static final double HATCH = 8;
    private static final double ARC_STEP = 0.15;

    void line(Point from, Point to) {
        polyline(List.of(from, to));
    }

    /// A line so light that labels may cross it.
    void mark(Point from, Point to) {
        sheet.draw(Svg.path(List.of(from, to), false, ink.classes(), part), List.of());
    }

    void polyline(List<Point> points) {
        sheet.draw(Svg.path(points, false, ink.classes(), part), segments(points));
    }

    void outline(List<Point> points) {
        var closed = new ArrayList<>(points);
        closed.add(points.getFirst());
        sheet.draw(Svg.path(points, true, ink.classes(), part), segments(closed));
    }

    void strokes(List<Segment> strokes) {
        sheet.draw(Svg.strokes(strokes, ink.classes(), part), strokes);
    }

    void circle(Point middle, double radius) {
        var round = arcPoints(middle, radius, 0, 2 * Math.PI);
        sheet.draw(Svg.circle(middle, radius, ink.classes(), part), segments(round));
    }

    /// Part of a circle between two angles, 0 to the right and growing clockwise (rad).
    void arc(Point middle, double radius, double fromAngle, double toAngle) {
        polyline(arcPoints(middle, radius, fromAngle, toAngle));
    }

    void dot(Point middle) {
        var head = "head" + (ink.asked() ? " asked" : "");
        sheet.draw(Svg.circle(middle, 3, head, part), List.of());
    }

    /// An arrow whose tip is at its end.
    void arrow(Point from, Point to) {
        double head = headFor(from, to);
        var way = to.minus(from).unit();
        sheet.draw(
                Svg.path(
                        List.of(from, to.plus(way, -head * HEAD_OF_SHORT)),
                        false,
                        ink.classes(),
                        part),
                segments(List.of(from, to)));
        head(to, way, head);
    }

    /// A line with a head at both ends, which measures what lies between.
    void span(Point from, Point to) {
        double head = Math.min(headFor(from, to), from.distanceTo(to) / 3);
        var way = to.minus(from).unit();
        polyline(List.of(from, to));
        head(to, way, head);
        head(from, way.reversed(), head);
    }

    /// Ground from left to right: a line with hatching beneath.
    void ground(double left, double right, double y) {
        line(new Point(left, y), new Point(right, y));
        var strokes = new ArrayList<Segment>();
        for (double x = left + HATCH; x <= right; x += HATCH_STEP) {
            strokes.add(new Segment(new Point(x, y), new Point(x - HATCH, y + HATCH)));
        }
        new Pen(sheet, part, Ink.THIN).strokes(strokes);
    }

    static List<Point> arcPoints(Point middle, double radius, double fromAngle, double toAngle) {
        var points = new ArrayList<Point>();
        int steps = (int) Math.ceil(Math.abs(toAngle - fromAngle) / ARC_STEP) + 1;
        for (int i = 0; i <= steps; i++) {
            double angle = fromAngle + (toAngle - fromAngle) * i / steps;
            points.add(middle.plus(Point.direction(angle), radius));
        }
        return points;
    }

    private void head(Point tip, Point way, double size) {
        var foot = tip.plus(way, -size);
        var side = way.turned();
        var corners =
                List.of(
                        tip,
                        foot.plus(side, size * HALF_WIDTH),
                        foot.plus(side, -size * HALF_WIDTH));
        String classes = "head" + (ink.asked() ? " asked" : "");
        sheet.draw(Svg.path(corners, true, classes, part), List.of());
    }

    private static double headFor(Point from, Point to) {
        return Math.min(HEAD, from.distanceTo(to) * HEAD_OF_SHORT);
    }

    private static List<Segment> segments(List<Point> points) {
        var segments = new ArrayList<Segment>();
        for (int i = 1; i < points.size(); i++) {
            segments.add(new Segment(points.get(i - 1), points.get(i)));
        }
        return segments;
    }
}
