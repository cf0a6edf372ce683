package org.groundline.diagram;

/// A point of the picture, or a way from one to another: x to the right, y down.
record Point(double x, double y) {
    /// One step from a point in this direction, 0 to the right and growing clockwise (rad).
    static Point direction(double angle) {
        return new Point(Math.cos(angle), Math.sin(angle));
    }

    Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /// This point moved so many steps of a way.
    Point plus(Point way, double steps) {
        return new Point(x + way.x * steps, y + way.y * steps);
    }

    Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    /// The point at this part of the way to another.
    Point towards(Point other, double part) {
        return plus(other.minus(this), part);
    }

    double length() {
        return Math.hypot(x, y);
    }

    double distanceTo(Point other) {
        return other.minus(this).length();
    }

    /// The way of length one in the same direction.
    Point unit() {
        return new Point(x / length(), y / length());
    }

    Point reversed() {
        return new Point(-x, -y);
    }

    /// The way turned a quarter clockwise.
    Point turned() {
        return new Point(-y, x);
    }
}
