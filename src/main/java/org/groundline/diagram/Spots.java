package org.groundline.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/// Places for a label, the best first.
final class Spots {
    static final Point RIGHT = new Point(1, 0);
    static final Point LEFT = new Point(-1, 0);
    static final Point UP = new Point(0, -1);
    static final Point DOWN = new Point(0, 1);

    private static final List<Point> DIRECTIONS =
            List.of(
                    RIGHT,
                    LEFT,
                    UP,
                    DOWN,
                    new Point(1, -1).unit(),
                    new Point(1, 1).unit(),
                    new Point(-1, -1).unit(),
                    new Point(-1, 1).unit());
    private static final double[] GAPS = {4, 7, 11, 16, 24, 34};
    private static final double[] PARTS = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9, 0, 1};
    private static final double STEP = 3;
    private static final double NO_LINE = 1;
    private static final double OTHER_SIDE = 25;
    private static final double AT_ENDS = 35;

    private Spots() {}

    /// Around a point; these directions before all others.
    static List<Spot> around(Point anchor, Point... preferred) {
        var directions = new ArrayList<>(List.of(preferred));
        DIRECTIONS.stream().filter(d -> !directions.contains(d)).forEach(directions::add);
        return beside(List.of(anchor), directions);
    }

    /// On both sides of a line, from its middle outwards, or else at its ends.
    static List<Spot> along(Point from, Point to) {
        if (from.distanceTo(to) < NO_LINE) {
            return around(from);
        }
        var side = to.minus(from).unit().turned();
        return along(from, to, List.of(side, side.reversed()));
    }

    /// On one side of a line, from its middle outwards, or else on the other or at its ends.
    static List<Spot> along(Point from, Point to, Point side) {
        var spots = new ArrayList<>(along(from, to, List.of(side)));
        spots.addAll(worse(along(from, to), OTHER_SIDE));
        return spots;
    }

    private static List<Spot> along(Point from, Point to, List<Point> sides) {
        if (from.distanceTo(to) < NO_LINE) {
            return around(from, sides.toArray(Point[]::new));
        }
        var anchors = DoubleStream.of(PARTS).mapToObj(part -> from.towards(to, part)).toList();
        var spots = new ArrayList<>(beside(anchors, sides));
        spots.addAll(worse(around(from), AT_ENDS));
        spots.addAll(worse(around(to), AT_ENDS));
        return spots;
    }

    private static List<Spot> worse(List<Spot> spots, double by) {
        return spots.stream()
                .map(s -> new Spot(s.anchor(), s.direction(), s.gap(), s.cost() + by))
                .toList();
    }

    /// Anywhere in a region, from its upper left corner on.
    static List<Spot> inside(Box region) {
        var spots = new ArrayList<Spot>();
        for (double y = region.top(); y <= region.bottom(); y += 6) {
            for (double x = region.left(); x <= region.right(); x += 12) {
                spots.add(new Spot(new Point(x, y), RIGHT, 0, spots.size() * 0.05));
            }
        }
        return spots;
    }

    /// Anywhere in a frame, the nearest to a point first.
    static List<Spot> anywhere(Box frame, Point wished) {
        return inside(frame).stream()
                .map(s -> new Spot(s.anchor(), RIGHT, 0, wished.distanceTo(s.anchor())))
                .sorted(Comparator.comparingDouble(Spot::cost))
                .toList();
    }

    private static List<Spot> beside(List<Point> anchors, List<Point> directions) {
        var spots = new ArrayList<Spot>();
        for (int a = 0; a < anchors.size(); a++) {
            for (int d = 0; d < directions.size(); d++) {
                for (double gap : GAPS) {
                    double cost = (a + d) * STEP + gap - GAPS[0];
                    spots.add(new Spot(anchors.get(a), directions.get(d), gap, cost));
                }
            }
        }
        return spots;
    }
}
