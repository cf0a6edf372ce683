package org.groundline.web.api;

import org.groundline.bank.Figure;
import org.groundline.diagram.Drawing;
import org.groundline.diagram.Purpose;

import java.util.List;

/// A drawing of an item.
///
/// @param svg the `svg` element, with classes and no styles
/// @param title what it shows
/// @param description the same facts in words
record FigureView(String svg, String title, String description) {
    static List<FigureView> of(List<Figure> figures, Purpose purpose) {
        return figures.stream().map(figure -> of(figure.draw(purpose, "figure"))).toList();
    }

    private static FigureView of(Drawing drawing) {
        return new FigureView(drawing.svg(), drawing.title(), drawing.description());
    }
}
