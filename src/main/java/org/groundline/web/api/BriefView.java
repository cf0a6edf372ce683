package org.groundline.web.api;

import org.groundline.bank.Brief;
import org.groundline.bank.Citation;
import org.groundline.diagram.Purpose;
import org.groundline.reading.Reading;
import org.groundline.web.request.BriefHtml;

import java.util.List;

/// A topic's brief, and whether the one who asks has read it.
///
/// @param version to be sent back by whoever has read it
/// @param markdown of the text, with marks of objectives in braces
/// @param html of the text with its figures
/// @param figures of the Markdown, by the places it gives them
record BriefView(
        String topic,
        String module,
        String title,
        String version,
        String markdown,
        String html,
        List<PlacedFigure> figures,
        List<String> sources,
        ReadingView reading) {
    private static final String OBJECTIVES = "Objectives";

    record PlacedFigure(String place, FigureView figure) {}

    static BriefView of(Brief brief, String title, Reading reading) {
        return new BriefView(
                brief.topic(),
                brief.module(),
                title,
                brief.version(),
                brief.text(),
                BriefHtml.of(brief, 0, OBJECTIVES),
                brief.figures().entrySet().stream()
                        .map(
                                figure ->
                                        new PlacedFigure(
                                                figure.getKey(),
                                                FigureView.of(figure.getValue(), Purpose.SOLUTION)))
                        .toList(),
                brief.sources().stream().map(Citation::text).toList(),
                ReadingView.of(reading));
    }
}
