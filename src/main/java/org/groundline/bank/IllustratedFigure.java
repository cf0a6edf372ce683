package org.groundline.bank;

import org.groundline.diagram.Drawing;
import org.groundline.diagram.Illustration;
import org.groundline.diagram.Purpose;

/// A drawing made by hand, kept whole. It is kept as written by [Frozen] for ever.
public record IllustratedFigure(
        int width, int height, String content, String title, String description) implements Figure {
    static IllustratedFigure of(Illustration drawn) {
        return new IllustratedFigure(
                drawn.width(), drawn.height(), drawn.content(), drawn.title(), drawn.description());
    }

    @Override
    public Drawing draw(Purpose purpose, String idPrefix) {
        return new Illustration(width, height, content, title, description).draw(idPrefix);
    }
}
