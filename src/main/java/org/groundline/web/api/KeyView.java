package org.groundline.web.api;

import org.groundline.bank.Key;

import java.util.List;
import java.util.Optional;

/// The key of an item, given out only after the answer (practice) or the hand-in (tests).
///
/// @param kind `choice` has a letter; `number` has the rest, decimals as texts in the item's unit
/// @param lowest the lowest answer that is right; `highest` the highest
/// @param steps the worked solution; of a `choice` empty where nothing was to be computed
record KeyView(
        String kind,
        Optional<String> letter,
        Optional<String> answer,
        Optional<String> lowest,
        Optional<String> highest,
        Optional<String> unit,
        Optional<List<String>> steps) {
    static KeyView of(Key key) {
        return switch (key) {
            case Key.Choice choice ->
                    new KeyView(
                            "choice",
                            Optional.of(choice.letter()),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(choice.steps()));
            case Key.Number number ->
                    new KeyView(
                            "number",
                            Optional.empty(),
                            Optional.of(number.answer().toPlainString()),
                            Optional.of(number.lowest().toPlainString()),
                            Optional.of(number.highest().toPlainString()),
                            Optional.of(number.unit()),
                            Optional.of(number.steps()));
        };
    }
}
