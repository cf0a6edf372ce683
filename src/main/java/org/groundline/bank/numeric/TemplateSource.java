package org.groundline.bank.numeric;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// A numeric template as its author wrote it: texts only, nothing checked but their presence.
/// Whatever may be left out in a bank file is empty here.
///
/// @param draw the values to be drawn, by name, in the author's order
/// @param where the condition on drawn values
public record TemplateSource(
        String id,
        String stem,
        Map<String, DrawSource> draw,
        Optional<String> where,
        AnswerSource answer,
        List<MistakeSource> mistakes,
        List<StepSource> steps,
        List<WorkedSource> worked,
        String explain) {
    public TemplateSource {
        draw = inOrder(draw);
        mistakes = List.copyOf(mistakes);
        steps = List.copyOf(steps);
        worked = List.copyOf(worked);
    }

    /// One drawn value: a stepped range or a list, in a unit (none for a plain number).
    public record DrawSource(
            Optional<String> from,
            Optional<String> to,
            Optional<String> step,
            List<String> anyOf,
            Optional<String> unit) {
        public DrawSource {
            anyOf = List.copyOf(anyOf);
        }
    }

    /// How the key is computed, printed and compared.
    ///
    /// @param round the step of the printed answer, in its unit
    /// @param side `down`, `up` or `nearest`
    /// @param tolerance `2 %` of the unrounded value, or an absolute value in the answer's unit
    /// @param between the two ends of the plausible range, or empty
    public record AnswerSource(
            String formula,
            Optional<String> unit,
            Optional<String> round,
            Optional<String> side,
            Optional<String> tolerance,
            List<String> between) {
        public AnswerSource {
            between = List.copyOf(between);
        }
    }

    /// The result that a named misconception leads to, in the answer's unit.
    public record MistakeSource(String misconception, String formula) {}

    /// One line of the worked solution; later formulas may use its name.
    public record StepSource(String name, String text, String formula, Optional<String> unit) {}

    /// A known case: all drawn values and the answer, with units, and where it comes from.
    public record WorkedSource(
            Map<String, String> given, String answer, Optional<String> within, String source) {
        public WorkedSource {
            given = inOrder(given);
        }
    }

    private static <V> Map<String, V> inOrder(Map<String, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
