package org.groundline.diagram;

import java.util.List;

/// Two axes, across along the lower edge and up along the left one, with numbers and a faint grid.
record Plot(Axis across, Axis up) {
    private static final double NUMBERS_ACROSS = 40;
    private static final double NUMBERS_UP = 20;
    private static final double TICK = 5;

    Point at(double x, double y) {
        return new Point(across.at(x), up.at(y));
    }

    /// The two edges, without any number: for a picture in which nothing has its size.
    void frame(Plate plate) {
        var corner = new Point(across.start(), bottom());
        plate.pen("axes", Ink.THIN)
                .polyline(
                        List.of(
                                new Point(across.start(), top()),
                                corner,
                                new Point(across.end(), bottom())));
    }

    /// A number and a line through the plot at each multiple of the first step that leaves room.
    void numbers(Plate plate, double[] stepsAcross, double[] stepsUp) {
        var grid = plate.pen("grid", Ink.FAINT);
        for (double value : across.multiples(across.step(NUMBERS_ACROSS, stepsAcross))) {
            double x = across.at(value);
            grid.mark(new Point(x, top()), new Point(x, bottom()));
            plate.fixed(Axis.print(value), new Point(x, bottom()), Spots.DOWN, 6);
        }
        for (double value : up.multiples(up.step(NUMBERS_UP, stepsUp))) {
            double y = up.at(value);
            grid.mark(new Point(across.start(), y), new Point(across.end(), y));
            plate.fixed(Axis.print(value), new Point(across.start(), y), Spots.LEFT, 4);
        }
    }

    /// Small ticks inside both edges, for reading between the numbers.
    void ticks(Plate plate, double stepAcross, double stepUp) {
        var pen = plate.pen("ticks", Ink.THIN);
        for (double value : across.multiples(stepAcross)) {
            double x = across.at(value);
            pen.mark(new Point(x, bottom() - TICK), new Point(x, bottom()));
        }
        for (double value : up.multiples(stepUp)) {
            double y = up.at(value);
            pen.mark(new Point(across.start(), y), new Point(across.start() + TICK, y));
        }
    }

    /// What stands on the axes, with the units.
    void titles(Plate plate, String titleAcross, String titleUp) {
        plate.fixed(titleUp, new Point(2, 10), Spots.RIGHT, 0);
        plate.fixed(titleAcross, new Point(across.end(), bottom() + 32), Spots.LEFT, 0);
    }

    double top() {
        return Math.min(up.start(), up.end());
    }

    double bottom() {
        return Math.max(up.start(), up.end());
    }
}
