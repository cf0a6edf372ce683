package org.groundline.diagram;

/// An upright rectangle.
record Box(double left, double top, double right, double bottom) {
    /// The box of this size whose nearest side lies so far from a point, in a direction.
    static Box beside(Point anchor, Point direction, double gap, double width, double height) {
        double reach =
                gap + (Math.abs(direction.x()) * width + Math.abs(direction.y()) * height) / 2;
        Point middle = anchor.plus(direction, reach);
        return around(middle, width, height);
    }

    static Box around(Point middle, double width, double height) {
        return new Box(
                middle.x() - width / 2,
                middle.y() - height / 2,
                middle.x() + width / 2,
                middle.y() + height / 2);
    }

    boolean overlaps(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean isInside(Box frame) {
        return left >= frame.left
                && top >= frame.top
                && right <= frame.right
                && bottom <= frame.bottom;
    }

    Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }
}
