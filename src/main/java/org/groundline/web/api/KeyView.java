package org.groundline.web.api;

import org.groundline.bank.Key;
import org.groundline.diagram.Purpose;

import java.util.List;
import java.util.Optional;

/// The key of an item, given out only after the answer (practice) or the hand-in (tests).
///
/// @param kind `choice` has a letter; `number` has the rest, decimals as texts in the item's unit
/// @param lowest the lowest answer that is right; `highest` the highest
/// @param figures the drawing that explains the answer, or none
/// @param steps the worked solution; of a `choice` empty where nothing was to be computed
record KeyView(
        String kind,
        Optional<String> letter,
        Optional<String> answer,
        Optional<String> lowest,
        Optional<String> highest,
        Optional<String> unit,
        List<String> steps,
        List<FigureView> figures) {
    static KeyView of(Key key) {
        List<FigureView> figures = FigureView.of(key.figures(), Purpose.SOLUTION);
        return switch (key) {
            case Key.Choice choice ->
                    new KeyView(
                            "choice",
                            Optional.of(choice.letter()),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            choice.steps(),
                            figures);
            case Key.Number number ->
                    new KeyView(
                            "number",
                            Optional.empty(),
                            Optional.of(number.answer().toPlainString()),
                            Optional.of(number.lowest().toPlainString()),
                            Optional.of(number.highest().toPlainString()),
                            Optional.of(number.unit()),
                            number.steps(),
                            figures);
        };
    }
}
