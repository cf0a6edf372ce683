package org.groundline.bank;

import static java.util.stream.Collectors.toUnmodifiableSet;

import org.groundline.bank.file.Nearest;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
import org.groundline.diagram.Diagram;
import org.groundline.diagram.Diagrams;
import org.groundline.diagram.Purpose;
import org.groundline.diagram.Situation;
import org.groundline.formulary.Input;
import org.groundline.measure.DecimalConvention;
import org.groundline.measure.Reading.Read;
import org.groundline.measure.Reading.Unreadable;
import org.groundline.measure.TypedNumber;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/// The drawings of a brief, computed from fixed values: what stands in its head under `diagrams`.
final class BriefDiagrams {
    /// Begins the destination of a picture that is one of these.
    static final String PREFIX = "diagram:";

    private final Optional<Section> all;
    private final Map<String, Optional<Figure>> read = new LinkedHashMap<>();
    private final Set<String> shown = new HashSet<>();

    BriefDiagrams(Section head) {
        all = head.has("diagrams") ? Optional.of(head.section("diagrams", "")) : Optional.empty();
        all.ifPresent(
                section ->
                        section.keys()
                                .forEach(n -> read.put(n, new One(section.section(n, "")).read())));
    }

    /// The drawing, or empty after noting that there is none; one with a fault has been noted.
    Optional<Figure> find(String destination, Notes notes, int line) {
        String name = destination.substring(PREFIX.length());
        shown.add(name);
        if (!read.containsKey(name)) {
            notes.add(
                    Rule.DIAGRAM_UNKNOWN,
                    line,
                    "the text names the unknown diagram '" + name + "'",
                    Nearest.remedy(name, read.keySet(), "add it to 'diagrams' in the head"));
        }
        return read.getOrDefault(name, Optional.empty());
    }

    void noteUnused() {
        for (String name : read.keySet()) {
            if (!shown.contains(name)) {
                String problem = "has the diagram '" + name + "', which the text does not show";
                String remedy = "write ![Caption](%s%s), or remove it".formatted(PREFIX, name);
                all.ifPresent(s -> s.note(Rule.VALUE, name, problem, remedy));
            }
        }
    }

    /// One drawing under its name.
    private record One(Section section) {
        Optional<Figure> read() {
            section.allowOnly("kind", "values", "labels");
            String kind = section.text("kind", "name the kind of drawing");
            Optional<Diagram> diagram = Diagrams.find(kind);
            if (diagram.isEmpty() && !kind.isEmpty()) {
                List<String> kinds = Diagrams.list().stream().map(Diagram::name).toList();
                String remedy =
                        Nearest.remedy(kind, kinds, "use one of " + String.join(", ", kinds));
                section.note(Rule.DIAGRAM_UNKNOWN, "kind", "has no drawing '" + kind + "'", remedy);
            }
            return diagram.flatMap(this::figure);
        }

        private Optional<Figure> figure(Diagram diagram) {
            long before = section.errors();
            Section values = section.section("values", "give each value with its unit");
            Map<String, Double> si = new LinkedHashMap<>();
            Map<String, String> printed = new LinkedHashMap<>();
            for (Input input : inputs(diagram)) {
                values.findText(input.name())
                        .ifPresent(text -> value(values, input, text, si, printed));
            }
            values.allowOnly(inputs(diagram).stream().map(Input::name).toArray(String[]::new));
            diagram.silentInputs().forEach(printed::remove);
            var situation = new Situation(si, printed, labels(diagram, si.keySet()), Set.of());
            return section.errors() > before ? Optional.empty() : drawn(diagram, situation);
        }

        private static List<Input> inputs(Diagram diagram) {
            return Stream.concat(diagram.inputs().stream(), diagram.optionalInputs().stream())
                    .toList();
        }

        /// A value is printed as it is written, but with the signs of print; one without a unit as
        /// its drawing prints it.
        private static void value(
                Section values,
                Input input,
                String text,
                Map<String, Double> si,
                Map<String, String> printed) {
            switch (TypedNumber.read(text, input.unit(), DecimalConvention.DOT)) {
                case Read read -> {
                    si.put(input.name(), input.unit().toSi(read.value().doubleValue()));
                    if (!text.matches("[-0-9.]+")) {
                        printed.put(
                                input.name(),
                                read.unit()
                                        .print(
                                                input.unit()
                                                        .convert(read.value(), read.unit())
                                                        .stripTrailingZeros()));
                    }
                }
                case Unreadable unreadable ->
                        values.note(
                                Rule.VALUE,
                                input.name(),
                                "has the %s '%s'".formatted(input.words(), text),
                                "write " + input.unit().dimension());
            }
        }

        private Set<String> labels(Diagram diagram, Set<String> given) {
            List<String> askable = diagram.askable(given);
            List<String> listed = section.texts("labels");
            for (String label : listed) {
                if (!askable.contains(label)) {
                    String problem = "has the unknown label '" + label + "'";
                    String otherwise = "use some of " + String.join(", ", askable);
                    section.note(
                            Rule.VALUE,
                            "labels",
                            problem,
                            Nearest.remedy(label, askable, otherwise));
                }
            }
            return listed.isEmpty()
                    ? given.stream().filter(askable::contains).collect(toUnmodifiableSet())
                    : Set.copyOf(listed);
        }

        /// Drawn once, so that what the theory behind it refuses does not load.
        private Optional<Figure> drawn(Diagram diagram, Situation situation) {
            Figure figure = ComputedFigure.of(diagram.name(), situation);
            try {
                figure.draw(Purpose.SOLUTION, "figure");
                return Optional.of(figure);
            } catch (IllegalArgumentException refused) {
                String problem = "cannot be drawn: " + refused.getMessage();
                section.note(Rule.VALUE, "values", problem, "change the values");
                return Optional.empty();
            }
        }
    }
}
