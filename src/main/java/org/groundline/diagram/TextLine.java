package org.groundline.diagram;

/// One line of a label.
record TextLine(String text, boolean asked) {
    double width() {
        return Lettering.width(text, asked);
    }
}
