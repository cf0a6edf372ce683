package org.groundline.diagram;

import java.util.ArrayList;
import java.util.List;

/// Outlines of a wing, a canopy and a person: generic, of no make.
final class Silhouettes {
    private Silhouettes() {}

    /// A wing seen from the side, flying to the right; its pilot is at this point.
    static void glider(Pen pen, Point pilot) {
        var trailing = pilot.plus(-9, -16);
        var leading = pilot.plus(11, -18);
        pen.polyline(
                List.of(
                        trailing,
                        pilot.plus(-2, -20),
                        pilot.plus(6, -21),
                        leading,
                        pilot.plus(8, -17),
                        trailing));
        pen.strokes(List.of(new Segment(trailing, pilot), new Segment(leading, pilot)));
        pen.dot(pilot);
    }

    /// A wing's section around a point, its nose towards an angle.
    static void section(Pen pen, Point middle, double chord, double angle) {
        var nose = Point.direction(angle);
        var up = new Point(nose.y(), -nose.x());
        var outline = new ArrayList<Point>();
        double[][] shape = {
            {-0.5, 0},
            {-0.2, 0.08},
            {0.1, 0.12},
            {0.3, 0.115},
            {0.43, 0.08},
            {0.5, 0.02},
            {0.47, -0.02},
            {0.3, -0.025},
            {0, -0.01}
        };
        for (double[] corner : shape) {
            outline.add(middle.plus(nose, corner[0] * chord).plus(up, corner[1] * chord));
        }
        pen.outline(outline);
    }

    /// A wing from behind with its pilot at this point; `up` is the way from pilot to wing.
    static void fromBehind(Pen pen, Pen lines, Point pilot, Point up, double away) {
        double tilt = Math.atan2(up.y(), up.x());
        var arc = Pen.arcPoints(pilot.plus(up, -away * 0.2), away * 1.2, tilt - 0.6, tilt + 0.6);
        pen.polyline(arc);
        lines.mark(arc.getFirst(), pilot);
        lines.mark(arc.getLast(), pilot);
        pen.dot(pilot);
    }

    /// A person who stands at this point.
    static void person(Pen pen, Point feet, double tall) {
        var hip = feet.plus(0, -tall * 0.48);
        var neck = feet.plus(0, -tall * 0.82);
        pen.strokes(
                List.of(
                        new Segment(feet.plus(-tall * 0.12, 0), hip),
                        new Segment(feet.plus(tall * 0.12, 0), hip),
                        new Segment(hip, neck),
                        new Segment(
                                neck.plus(0, tall * 0.08), feet.plus(-tall * 0.2, -tall * 0.52)),
                        new Segment(
                                neck.plus(0, tall * 0.08), feet.plus(tall * 0.2, -tall * 0.52))));
        pen.circle(feet.plus(0, -tall * 0.91), tall * 0.09);
    }
}
