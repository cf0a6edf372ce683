package org.groundline.bank;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/// What only marking sees of an item, with all texts that a result may need later. It is kept as
/// written by [Frozen] for ever, so a component is never renamed and never changes its meaning; a
/// new one gets a default there.
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Key.Choice.class, name = "choice"),
    @JsonSubTypes.Type(value = Key.Number.class, name = "number")
})
public sealed interface Key {
    String rationale();

    /// Where the content comes from, as a reader sees it.
    List<String> sources();

    /// The worked solution, line by line.
    List<String> steps();

    /// The mistake that a wrong answer comes from, as the answer was read; empty for a letter.
    default Optional<Mistake> findMistake(String reading) {
        return switch (this) {
            case Choice choice -> Optional.empty();
            case Number number -> number.findMistake(new BigDecimal(reading));
        };
    }

    /// The drawing that explains the answer, or none.
    List<Figure> figures();

    /// @param letter the right option
    /// @param beliefs the belief behind each wrong option, by letter
    /// @param steps the worked solution; empty where nothing was to be computed
    record Choice(
            String letter,
            Map<String, Belief> beliefs,
            String rationale,
            List<String> sources,
            List<String> steps,
            List<Figure> figures)
            implements Key {
        public Choice {
            beliefs = Collections.unmodifiableMap(new TreeMap<>(beliefs));
            sources = List.copyOf(sources);
            steps = List.copyOf(steps);
            figures = List.copyOf(figures);
        }

        public Optional<Belief> findBelief(String chosen) {
            return Optional.ofNullable(beliefs.get(chosen));
        }
    }

    /// All decimals are in the item's unit; an answer from lowest to highest is right.
    ///
    /// @param answer the right answer as printed
    /// @param steps the worked solution
    @SuppressWarnings("JavaLangClash") // beside Choice it is the plain word
    record Number(
            BigDecimal answer,
            BigDecimal lowest,
            BigDecimal highest,
            String unit,
            List<Mistake> mistakes,
            List<String> steps,
            String rationale,
            List<String> sources,
            List<Figure> figures)
            implements Key {
        public Number {
            answer = Frozen.plain(answer);
            lowest = Frozen.plain(lowest);
            highest = Frozen.plain(highest);
            mistakes = List.copyOf(mistakes);
            steps = List.copyOf(steps);
            sources = List.copyOf(sources);
            figures = List.copyOf(figures);
        }

        /// The belief that a wrong answer points to; the first one where several could.
        public Optional<Belief> findBelief(BigDecimal given) {
            return findMistake(given).map(Mistake::belief);
        }

        /// The mistake that a wrong answer comes from; the first one where several could.
        public Optional<Mistake> findMistake(BigDecimal given) {
            return mistakes.stream().filter(m -> m.covers(given)).findFirst();
        }
    }

    /// The wrong answers that point to one belief.
    ///
    /// @param shown the wrong result as an option would print it
    /// @param step the position of the step that goes wrong, from 1; 0 where none is known
    record Mistake(
            Belief belief, BigDecimal shown, BigDecimal lowest, BigDecimal highest, int step) {
        public Mistake {
            shown = Frozen.plain(shown);
            lowest = Frozen.plain(lowest);
            highest = Frozen.plain(highest);
        }

        boolean covers(BigDecimal given) {
            return given.compareTo(lowest) >= 0 && given.compareTo(highest) <= 0;
        }
    }
}
