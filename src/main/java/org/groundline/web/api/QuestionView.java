package org.groundline.web.api;

import org.groundline.bank.Shown;
import org.groundline.diagram.Purpose;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/// What a student sees of an item; texts are Markdown.
///
/// @param kind `choice` has options, `number` has a unit
/// @param figures the drawing beside the stem, or none
/// @param unit in which the answer is asked; empty for a plain number
record QuestionView(
        String kind,
        String stem,
        Optional<List<OptionView>> options,
        Optional<String> unit,
        List<FigureView> figures) {
    record OptionView(String letter, String text) {}

    static QuestionView of(Shown shown) {
        List<FigureView> figures = FigureView.of(shown.figures(), Purpose.STEM);
        return switch (shown) {
            case Shown.Choice choice ->
                    new QuestionView(
                            "choice",
                            choice.stem(),
                            Optional.of(lettered(choice.options())),
                            Optional.empty(),
                            figures);
            case Shown.Number number ->
                    new QuestionView(
                            "number",
                            number.stem(),
                            Optional.empty(),
                            Optional.of(number.unit()),
                            figures);
        };
    }

    private static List<OptionView> lettered(List<String> options) {
        return IntStream.range(0, options.size())
                .mapToObj(i -> new OptionView(String.valueOf((char) ('A' + i)), options.get(i)))
                .toList();
    }
}
