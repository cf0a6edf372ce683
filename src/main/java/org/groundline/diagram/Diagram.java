package org.groundline.diagram;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toUnmodifiableSet;

import org.groundline.formulary.Input;
import org.groundline.measure.Rounding;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/// A kind of drawing: its name, what it is drawn from, what may be labelled and asked.
public final class Diagram {
    private final Kind kind;
    private final Set<String> silent;

    Diagram(Kind kind) {
        this.kind = kind;
        this.silent = kind.silent().stream().map(Term::id).collect(toUnmodifiableSet());
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

    /// The names of those inputs that a stem shows without a label, such as the polar that is to be
    /// read.
    public Set<String> silentInputs() {
        return silent;
    }

    /// The names of values that may be labelled or asked: inputs, and what follows from them.
    public List<String> askable() {
        return askable(Set.copyOf(namesOf(kind.inputs())));
    }

    /// Those of them that there are when only these inputs are given.
    public List<String> askable(Set<String> given) {
        var inputs = given.stream().filter(name -> !silent.contains(name)).sorted().toList();
        var derived =
                kind.derived().stream()
                        .filter(d -> d.needs().stream().allMatch(n -> given.contains(n.id())))
                        .map(d -> d.term().id());
        return Stream.concat(inputs.stream(), derived).distinct().toList();
    }

    /// Looks whether a solution could be drawn from these values, in SI.
    ///
    /// @throws IllegalArgumentException if not, as [#draw] would
    public void examine(Map<String, Double> values) {
        checkInputs(values, Purpose.SOLUTION);
        kind.complete(termsOf(values), kind.derived());
    }

    /// Draws a situation. For a stem, what is asked or not told may be missing.
    ///
    /// @param idPrefix begins the ids in the file; no two drawings on a page may share it
    /// @param language of the words in the picture
    /// @throws IllegalArgumentException if a value is missing, unknown, outside its range, or if
    ///   the theory behind the picture refuses the values; the message says which and why
    public Drawing draw(Situation situation, Purpose purpose, String idPrefix, String language) {
        check(situation, purpose);
        requireId(idPrefix);
        var values = kind.complete(termsOf(situation.values()), derivedFor(situation, purpose));
        var facts = new Facts(kind, situation, values, purpose);
        var plate = new Plate(facts, new Sheet(kind.height()), DiagramWords.in(language));
        kind.drawer().draw(plate);
        return plate.finish(kind.motif(), idPrefix);
    }

    @Override
    public String toString() {
        return name();
    }

    /// A stem computes only what it tells, as what it does not know may change all the rest.
    private List<Derived> derivedFor(Situation situation, Purpose purpose) {
        return switch (purpose) {
            case STEM -> kind.derived().stream().filter(d -> isTold(d, situation)).toList();
            case SOLUTION -> kind.derived();
        };
    }

    private static boolean isTold(Derived value, Situation situation) {
        String name = value.term().id();
        return situation.labelled().contains(name) && !situation.asked().contains(name);
    }

    private void check(Situation situation, Purpose purpose) {
        requireKnown(situation.values().keySet(), namesOf(kind.inputs()));
        var askable = purpose == Purpose.STEM ? askable() : askable(situation.values().keySet());
        requireKnown(situation.labelled(), askable);
        requireKnown(situation.asked(), askable);
        requireKnown(situation.printed().keySet(), askable);
        checkInputs(situation.values(), purpose);
    }

    private void checkInputs(Map<String, Double> values, Purpose purpose) {
        for (Input input : kind.inputs()) {
            Double si = values.get(input.name());
            if (si != null) {
                checkRange(input, si);
            } else if (isNeeded(input.name(), purpose)) {
                throw refused("needs " + input.name());
            }
        }
    }

    private boolean isNeeded(String name, Purpose purpose) {
        return switch (purpose) {
            case STEM -> silent.contains(name);
            case SOLUTION -> !isOptional(name);
        };
    }

    private void checkRange(Input input, double si) {
        double value = input.unit().fromSi(si);
        double noise = 1e-9 * (input.high() - input.low());
        if (!(value >= input.low() - noise && value <= input.high() + noise)) {
            throw refused(
                    "%s must be from %s to %s, in %s, but is %s"
                            .formatted(
                                    input.name(),
                                    input.low(),
                                    input.high(),
                                    input.unit(),
                                    readable(value)));
        }
    }

    private static String readable(double value) {
        return Double.isFinite(value)
                ? Rounding.significant(value, 6).toPlainString()
                : Double.toString(value);
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
        return kind.optional().stream().anyMatch(t -> t.id().equals(name));
    }

    private static List<String> namesOf(List<Input> inputs) {
        return inputs.stream().map(Input::name).toList();
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
