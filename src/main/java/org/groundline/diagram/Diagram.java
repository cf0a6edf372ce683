package org.groundline.diagram;

import static java.util.stream.Collectors.joining;

import org.groundline.formulary.Input;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/// A kind of drawing: its name, what it is drawn from, what may be labelled and asked.
public final class Diagram {
    private final Kind kind;

    Diagram(Kind kind) {
        this.kind = kind;
    }

    /// In lower case with hyphens, such as `glide-path`.
    public String name() {
        return kind.motif().id();
    }

    /// The inputs that each such drawing needs.
    public List<Input> inputs() {
        return kind.inputs().stream().filter(i -> !isOptional(i.name())).toList();
    }

    /// The inputs that may be left out.
    public List<Input> optionalInputs() {
        return kind.inputs().stream().filter(i -> isOptional(i.name())).toList();
    }

    /// The names of values that may be labelled or asked: inputs, and what follows from them.
    public List<String> askable() {
        return askable(Set.copyOf(namesOf(kind.inputs())));
    }

    /// Those of them that there are when only these inputs are given.
    public List<String> askable(Set<String> given) {
        var inputs = given.stream().filter(name -> !isOneOf(kind.silent(), name)).sorted().toList();
        var derived =
                kind.derived().stream()
                        .filter(d -> d.needs().stream().allMatch(n -> given.contains(n.id())))
                        .map(d -> d.term().id());
        return Stream.concat(inputs.stream(), derived).distinct().toList();
    }

    /// Draws a situation.
    ///
    /// @param idPrefix begins the ids in the file; no two drawings on a page may share it
    /// @param language of the words in the picture
    /// @throws IllegalArgumentException if a value is missing, unknown, outside its range, or if
    ///   the theory behind the picture refuses the values; the message says which and why
    public Drawing draw(Situation situation, Purpose purpose, String idPrefix, String language) {
        check(situation);
        requireId(idPrefix);
        var values = kind.complete(termsOf(situation.values()));
        var facts = new Facts(kind, situation, values, purpose);
        var plate = new Plate(facts, new Sheet(kind.height()), DiagramWords.in(language));
        kind.drawer().draw(plate);
        return plate.finish(kind.motif(), idPrefix);
    }

    @Override
    public String toString() {
        return name();
    }

    private void check(Situation situation) {
        requireKnown(situation.values().keySet(), namesOf(kind.inputs()));
        var askable = askable(situation.values().keySet());
        requireKnown(situation.labelled(), askable);
        requireKnown(situation.asked(), askable);
        requireKnown(situation.printed().keySet(), askable);
        kind.inputs().forEach(input -> check(input, situation.values()));
    }

    private void check(Input input, Map<String, Double> values) {
        Double si = values.get(input.name());
        if (si == null) {
            if (!isOptional(input.name())) {
                throw refused("needs " + input.name());
            }
            return;
        }
        double value = input.unit().fromSi(si);
        double noise = 1e-9 * (input.high() - input.low());
        if (!(value >= input.low() - noise && value <= input.high() + noise)) {
            throw refused(
                    "%s must be from %s to %s, in %s, but is %s"
                            .formatted(
                                    input.name(), input.low(), input.high(), input.unit(), value));
        }
    }

    private void requireKnown(Set<String> names, List<String> known) {
        String unknown =
                names.stream().filter(n -> !known.contains(n)).sorted().collect(joining(", "));
        if (!unknown.isEmpty()) {
            throw refused("has no %s, only %s".formatted(unknown, known));
        }
    }

    private void requireId(String idPrefix) {
        if (!idPrefix.matches("[A-Za-z][A-Za-z0-9_-]*")) {
            throw refused("takes no id like “%s”".formatted(idPrefix));
        }
    }

    private IllegalArgumentException refused(String why) {
        return new IllegalArgumentException("the drawing %s %s".formatted(name(), why));
    }

    private boolean isOptional(String name) {
        return isOneOf(kind.optional(), name);
    }

    private static List<String> namesOf(List<Input> inputs) {
        return inputs.stream().map(Input::name).toList();
    }

    private static boolean isOneOf(Set<Term> terms, String name) {
        return terms.stream().anyMatch(t -> t.id().equals(name));
    }

    private static Map<Term, Double> termsOf(Map<String, Double> values) {
        var terms = new EnumMap<Term, Double>(Term.class);
        for (Term term : Term.values()) {
            Double value = values.get(term.id());
            if (value != null) {
                terms.put(term, value);
            }
        }
        return terms;
    }
}
