package org.groundline.diagram;

/// A place where a label could stand: beside an anchor, in a direction.
///
/// @param direction of length one, or zero to stand on the anchor itself
/// @param cost how much worse this is than the best place
record Spot(Point anchor, Point direction, double gap, double cost) {
    /// Beyond this the text is no longer centred on its anchor.
    private static final double SIDEWAYS = 0.3;

    Box box(double width, double height) {
        return Box.beside(anchor, direction, gap, width, height);
    }

    /// The end of the text that stays where it is when the reader's font is narrower.
    TextEnd fixedEnd() {
        if (direction.x() > SIDEWAYS) {
            return TextEnd.START;
        }
        return direction.x() < -SIDEWAYS ? TextEnd.END : TextEnd.MIDDLE;
    }
}
