package org.groundline.diagram;

/// A straight line of the picture, which labels keep off.
record Segment(Point from, Point to) {
    /// Whether it passes through a box.
    boolean crosses(Box box) {
        if (Math.max(from.x(), to.x()) <= box.left()
                || Math.min(from.x(), to.x()) >= box.right()
                || Math.max(from.y(), to.y()) <= box.top()
                || Math.min(from.y(), to.y()) >= box.bottom()) {
            return false;
        }
        double first = side(box.left(), box.top());
        return first * side(box.right(), box.top()) < 0
                || first * side(box.left(), box.bottom()) < 0
                || first * side(box.right(), box.bottom()) < 0;
    }

    /// Above zero on one side of the line, below on the other.
    private double side(double x, double y) {
        return (to.x() - from.x()) * (y - from.y()) - (to.y() - from.y()) * (x - from.x());
    }
}
