package org.groundline.bank.numeric.picture;

import static java.util.stream.Collectors.toUnmodifiableSet;

import org.groundline.bank.numeric.formula.Expression;
import org.groundline.bank.numeric.formula.Scope;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.source.Formulas;
import org.groundline.bank.numeric.source.TemplateSource.DiagramSource;
import org.groundline.bank.numeric.source.Wording;
import org.groundline.diagram.Diagram;
import org.groundline.diagram.Diagrams;
import org.groundline.formulary.Input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/// Reads the drawing of a template.
public final class PictureReader {
    private static final String AT = "diagram";

    private final Scope drawn;
    private final Scope all;
    private final Faults faults;

    /// @param drawn the drawn values
    /// @param all these, the steps and the answer
    public PictureReader(Scope drawn, Scope all, Faults faults) {
        this.drawn = drawn;
        this.all = all;
        this.faults = faults;
    }

    /// The drawing, or nothing after noting a fault.
    public Optional<Picture> read(DiagramSource source) {
        Optional<Diagram> diagram = Diagrams.find(source.kind());
        if (diagram.isEmpty()) {
            var kinds = Diagrams.list().stream().map(Diagram::name).toList();
            faults.add(
                    AT + ".kind",
                    "there is no drawing “%s”".formatted(source.kind()),
                    "use one of " + String.join(", ", kinds));
            return Optional.empty();
        }
        List<Picture.Part> parts = parts(diagram.get(), source);
        checkAllThere(diagram.get(), source);
        return faults.isEmpty()
                ? Optional.of(picture(diagram.get(), source, parts))
                : Optional.empty();
    }

    private List<Picture.Part> parts(Diagram diagram, DiagramSource source) {
        var inputs = inputs(diagram);
        var parts = new ArrayList<Picture.Part>();
        source.values()
                .forEach(
                        (name, formula) ->
                                inputs.stream()
                                        .filter(input -> input.name().equals(name))
                                        .findFirst()
                                        .ifPresentOrElse(
                                                input -> part(input, formula).ifPresent(parts::add),
                                                () -> noteUnknown(diagram, name)));
        return parts;
    }

    private static List<Input> inputs(Diagram diagram) {
        return Stream.concat(diagram.inputs().stream(), diagram.optionalInputs().stream()).toList();
    }

    private void noteUnknown(Diagram diagram, String name) {
        faults.add(
                AT + ".values." + name,
                "the drawing %s has no value “%s”".formatted(diagram, name),
                "use one of " + names(inputs(diagram)));
    }

    private void checkAllThere(Diagram diagram, DiagramSource source) {
        for (Input input : diagram.inputs()) {
            if (!source.values().containsKey(input.name())) {
                faults.add(
                        AT + ".values",
                        "the drawing %s needs the value %s".formatted(diagram, input.name()),
                        "write %s: and a formula in %s"
                                .formatted(input.name(), input.unit().dimension()));
            }
        }
    }

    private static String names(List<Input> inputs) {
        return String.join(", ", inputs.stream().map(Input::name).toList());
    }

    private Optional<Picture.Part> part(Input input, String text) {
        return new Formulas(faults)
                .of(
                        AT + ".values." + input.name(),
                        text,
                        all,
                        input.unit().dimension(),
                        input.name() + " of the drawing",
                        "change the formula")
                .map(
                        formula ->
                                new Picture.Part(
                                        input.name(), formula, told(formula), textOf(formula)));
    }

    private Optional<Set<String>> told(Expression formula) {
        Set<String> names = formula.names().collect(toUnmodifiableSet());
        return drawn.names().keySet().containsAll(names) ? Optional.of(names) : Optional.empty();
    }

    /// What stands in the picture is written as in the text; a minus is told in words there.
    private static String textOf(Expression formula) {
        return switch (formula) {
            case Expression.Name name -> name.text();
            case Expression.Negation(Expression.Name name) -> name.text();
            default -> "";
        };
    }

    private Picture picture(Diagram diagram, DiagramSource source, List<Picture.Part> parts) {
        Optional<String> asked = source.asked().or(() -> answer(parts));
        List<String> askable = diagram.askable(source.values().keySet());
        asked.ifPresent(name -> checkAskable("asked", name, diagram, askable));
        source.labels().forEach(name -> checkAskable("labels", name, diagram, askable));
        Set<String> labels = labels(source, parts, askable);
        labels.forEach(name -> checkText(name, asked, parts));
        return new Picture(diagram, parts, asked, labels, source.inStem());
    }

    private static Optional<String> answer(List<Picture.Part> parts) {
        return parts.stream()
                .filter(part -> part.textOf().equals(Wording.ANSWER))
                .map(Picture.Part::name)
                .findFirst();
    }

    /// Where none are listed, all that have a text.
    private static Set<String> labels(
            DiagramSource source, List<Picture.Part> parts, List<String> askable) {
        if (!source.labels().isEmpty()) {
            return Set.copyOf(source.labels());
        }
        return parts.stream()
                .filter(part -> !part.textOf().isEmpty())
                .map(Picture.Part::name)
                .filter(askable::contains)
                .collect(toUnmodifiableSet());
    }

    private void checkAskable(String key, String name, Diagram diagram, List<String> askable) {
        if (!askable.contains(name)) {
            faults.add(
                    AT + "." + key,
                    "the drawing %s cannot tell “%s” of these values".formatted(diagram, name),
                    "use one of " + String.join(", ", askable));
        }
    }

    /// A value computed in place has no text of its own, only a long row of digits.
    private void checkText(String name, Optional<String> asked, List<Picture.Part> parts) {
        boolean computed =
                parts.stream()
                        .anyMatch(part -> part.name().equals(name) && part.textOf().isEmpty());
        if (computed && !asked.equals(Optional.of(name))) {
            faults.add(
                    AT + ".labels",
                    "%s is computed in place and has no text".formatted(name),
                    "make it a step and write the step's name as its formula, or leave it out");
        }
    }
}
