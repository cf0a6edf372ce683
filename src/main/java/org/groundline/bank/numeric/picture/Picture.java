package org.groundline.bank.numeric.picture;

import static java.util.stream.Collectors.toMap;
import static java.util.stream.Collectors.toUnmodifiableSet;

import org.groundline.bank.numeric.formula.Expression;
import org.groundline.bank.numeric.formula.NoAnswer;
import org.groundline.bank.numeric.posed.PosedPicture;
import org.groundline.bank.numeric.source.Wording;
import org.groundline.diagram.Diagram;
import org.groundline.diagram.Situation;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/// The drawing of a template: where its values come from, and what of it a stem may show.
///
/// @param asked the name of the value that is the answer; empty where the answer is not in it
/// @param labels the names of the values that are told
public record Picture(
        Diagram diagram,
        List<Picture.Part> parts,
        Optional<String> asked,
        Set<String> labels,
        boolean inStem) {
    public Picture {
        parts = List.copyOf(parts);
        labels = Set.copyOf(labels);
    }

    /// One value of the drawing.
    ///
    /// @param formula over the drawn values, the steps and the answer
    /// @param told the names of the drawn values that it tells; empty where it tells more than
    ///   those, which only a solution may show
    /// @param textOf the name of the value whose text stands for it; empty where none does
    record Part(String name, Expression formula, Optional<Set<String>> told, String textOf) {}

    /// The names that its values are computed from.
    public Stream<String> names() {
        return parts.stream().flatMap(part -> part.formula().names());
    }

    /// The drawn values that the stem's drawing tells.
    public Set<String> toldInStem() {
        return partsInStem()
                .flatMap(part -> part.told().stream())
                .flatMap(Collection::stream)
                .collect(toUnmodifiableSet());
    }

    /// The values of the drawing for a computed case.
    ///
    /// @param values the drawn values, the steps and the answer, in SI
    /// @throws NoAnswer if they cannot be drawn
    public Map<String, Double> valuesOf(double[] values) {
        Map<String, Double> drawing = new HashMap<>();
        try {
            parts.forEach(part -> drawing.put(part.name(), part.formula().value(values)));
            diagram.examine(drawing);
        } catch (IllegalArgumentException refused) {
            throw new NoAnswer("diagram", String.valueOf(refused.getMessage()));
        }
        return drawing;
    }

    /// @param values of the drawing, from [#valuesOf]
    /// @param texts how the drawn values, the steps and the answer are printed, by name
    public PosedPicture posed(Map<String, Double> values, Map<String, String> texts) {
        var solution = new Situation(values, printed(texts), labels, asking());
        return new PosedPicture(
                diagram.name(), inStem ? Optional.of(stem(solution)) : Optional.empty(), solution);
    }

    private Situation stem(Situation solution) {
        Set<String> known = partsInStem().map(Part::name).collect(toUnmodifiableSet());
        return new Situation(
                only(solution.values(), known::contains),
                only(solution.printed(), known::contains),
                labels.stream().filter(known::contains).collect(toUnmodifiableSet()),
                asking());
    }

    private Stream<Part> partsInStem() {
        Set<String> silent = diagram.silentInputs();
        return parts.stream()
                .filter(part -> inStem && part.told().isPresent())
                .filter(part -> !asking().contains(part.name()))
                .filter(part -> silent.contains(part.name()) || labels.contains(part.name()));
    }

    private Map<String, String> printed(Map<String, String> texts) {
        Map<String, String> printed = new HashMap<>();
        Set<String> silent = diagram.silentInputs();
        parts.stream()
                .filter(part -> texts.containsKey(part.textOf()) && !silent.contains(part.name()))
                .forEach(part -> printed.put(part.name(), texts.getOrDefault(part.textOf(), "")));
        asked.ifPresent(name -> printed.put(name, texts.getOrDefault(Wording.ANSWER, "")));
        return printed;
    }

    private Set<String> asking() {
        return asked.map(Set::of).orElse(Set.of());
    }

    private static <V> Map<String, V> only(Map<String, V> all, Predicate<String> which) {
        return all.entrySet().stream()
                .filter(entry -> which.test(entry.getKey()))
                .collect(toMap(Map.Entry::getKey, Map.Entry::getValue));
    }
}
