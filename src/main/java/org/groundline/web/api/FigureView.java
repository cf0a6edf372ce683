package org.groundline.web.api;

import org.groundline.bank.Figure;
import org.groundline.diagram.Drawing;
import org.groundline.diagram.Purpose;

import java.util.List;

/// A drawing of an item or a brief.
///
/// @param svg the `svg` element, with classes and no styles
/// @param title what it shows
/// @param description the same facts in words
record FigureView(String svg, String title, String description) {
    static List<FigureView> of(List<Figure> figures, Purpose purpose) {
        return figures.stream().map(figure -> of(figure, purpose)).toList();
    }

    static FigureView of(Figure figure, Purpose purpose) {
        Drawing drawing = figure.draw(purpose, "figure");
        return new FigureView(drawing.svg(), drawing.title(), drawing.description());
    }
}
