package org.groundline.bank.numeric.source;

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
        AskedSource asked,
        List<StepSource> steps,
        List<WorkedSource> worked,
        String explain,
        Optional<DiagramSource> diagram) {
    public TemplateSource {
        draw = inOrder(draw);
        steps = List.copyOf(steps);
        worked = List.copyOf(worked);
    }

    /// The misconceptions behind wrong answers; one may come twice.
    public List<String> misconceptions() {
        return switch (asked) {
            case AnswerSource answer ->
                    answer.mistakes().stream().map(MistakeSource::misconception).toList();
            case DecideSource decide ->
                    decide.options().stream().map(OptionSource::misconception).toList();
        };
    }

    /// What the formula's value is for: it is asked for itself, or it decides between options.
    public sealed interface AskedSource {
        String formula();

        Optional<String> unit();

        /// The two ends of the plausible range, or empty.
        List<String> between();
    }

    /// One drawn value, in a unit (none for a plain number).
    public sealed interface DrawSource {
        Optional<String> unit();
    }

    /// A value chosen by chance from a stepped range or a list.
    public record ChosenSource(
            Optional<String> from,
            Optional<String> to,
            Optional<String> step,
            List<String> anyOf,
            Optional<String> unit)
            implements DrawSource {
        public ChosenSource {
            anyOf = List.copyOf(anyOf);
        }
    }

    /// A value computed from other drawn values, wherever these are written.
    ///
    /// @param round the step to which it is rounded before it is printed and used
    public record DependentSource(String formula, String round, Optional<String> unit)
            implements DrawSource {}

    /// How the key is computed, printed and compared.
    ///
    /// @param round the step of the printed answer, in its unit
    /// @param side `down`, `up` or `nearest`
    /// @param tolerance `2 %` of the unrounded value, or an absolute value in the answer's unit
    /// @param sign `none` for what is positive by convention: a typed minus does not count
    /// @param mistakes what wrong ideas compute instead
    public record AnswerSource(
            String formula,
            Optional<String> unit,
            Optional<String> round,
            Optional<String> side,
            Optional<String> tolerance,
            Optional<String> sign,
            List<String> between,
            List<MistakeSource> mistakes)
            implements AskedSource {
        public AnswerSource {
            between = List.copyOf(between);
            mistakes = List.copyOf(mistakes);
        }
    }

    /// A value by which one of the options is right: the one whose interval holds it.
    ///
    /// @param tolerance an absolute value in the unit; no case within two of them of a bound is
    ///   posed
    /// @param bounds where one option ends and the next begins, ascending
    /// @param options from below the lowest bound to above the highest
    public record DecideSource(
            String formula,
            Optional<String> unit,
            Optional<String> tolerance,
            List<String> bounds,
            List<String> between,
            List<OptionSource> options)
            implements AskedSource {
        public DecideSource {
            bounds = List.copyOf(bounds);
            between = List.copyOf(between);
            options = List.copyOf(options);
        }
    }

    /// One decision, with the wrong idea that leads to it where it is not the right one.
    public record OptionSource(String text, String misconception) {}

    /// The result that a named misconception leads to, in the answer's unit.
    ///
    /// @param at the name of the step that goes wrong
    public record MistakeSource(String misconception, String formula, Optional<String> at) {}

    /// One line of the worked solution; later formulas may use its name.
    public record StepSource(String name, String text, String formula, Optional<String> unit) {}

    /// A known case: all drawn values and the answer, with units, and where it comes from.
    public record WorkedSource(
            Map<String, String> given, String answer, Optional<String> within, String source) {
        public WorkedSource {
            given = inOrder(given);
        }
    }

    /// The drawing of the template.
    ///
    /// @param kind the name of a [diagram][org.groundline.diagram.Diagram]
    /// @param values the formula of each of its inputs, by the input's name
    /// @param asked the name of the value that is the answer; left out, the input whose formula is
    ///   `answer`
    /// @param labels the names of the values that are told; left out, all that have a text
    /// @param inStem whether it stands beside the stem, too
    public record DiagramSource(
            String kind,
            Map<String, String> values,
            Optional<String> asked,
            List<String> labels,
            boolean inStem) {
        public DiagramSource {
            values = inOrder(values);
            labels = List.copyOf(labels);
        }
    }

    private static <V> Map<String, V> inOrder(Map<String, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
