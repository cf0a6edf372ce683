package org.groundline.web.request;

import static java.util.stream.Collectors.joining;

import org.groundline.bank.Figure;
import org.groundline.diagram.Purpose;

import java.util.List;

/// The drawings of items, as HTML.
public final class Figures {
    private Figures() {}

    /// @param id begins the ids in the drawings, which no other drawing on the page may share
    /// @return nothing where there are no figures
    public static String html(List<Figure> figures, Purpose purpose, String id) {
        return figures.stream()
                .map(figure -> figure.draw(purpose, id).svg())
                .map("<figure class=\"diagram\">%s</figure>"::formatted)
                .collect(joining());
    }
}
