package org.groundline.diagram;

/// Which point of a text is given.
enum TextEnd {
    START,
    MIDDLE,
    END;

    double of(Box box) {
        return switch (this) {
            case START -> box.left();
            case MIDDLE -> (box.left() + box.right()) / 2;
            case END -> box.right();
        };
    }

    /// The class that tells the style sheet; none for the start, where text stands by itself.
    String cssClass() {
        return switch (this) {
            case START -> "";
            case MIDDLE -> "middle";
            case END -> "end";
        };
    }
}
