package org.groundline.web.api;

import org.groundline.bank.Shown;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/// What a student sees of an item; texts are Markdown.
///
/// @param kind `choice` has options, `number` has a unit
/// @param unit in which the answer is asked; empty for a plain number
record QuestionView(
        String kind, String stem, Optional<List<OptionView>> options, Optional<String> unit) {
    record OptionView(String letter, String text) {}

    static QuestionView of(Shown shown) {
        return switch (shown) {
            case Shown.Choice(String stem, List<String> options) ->
                    new QuestionView(
                            "choice", stem, Optional.of(lettered(options)), Optional.empty());
            case Shown.Number(String stem, String unit, boolean signed) ->
                    new QuestionView("number", stem, Optional.empty(), Optional.of(unit));
        };
    }

    private static List<OptionView> lettered(List<String> options) {
        return IntStream.range(0, options.size())
                .mapToObj(i -> new OptionView(String.valueOf((char) ('A' + i)), options.get(i)))
                .toList();
    }
}
