package org.groundline.bank;

import static java.util.stream.Collectors.toMap;

import org.groundline.bank.numeric.posed.PosedPicture;
import org.groundline.diagram.Diagram;
import org.groundline.diagram.Diagrams;
import org.groundline.diagram.Drawing;
import org.groundline.diagram.Purpose;
import org.groundline.diagram.Situation;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/// A drawing computed from the numbers of an item, kept as the values it is drawn from. It is kept
/// as written by [Frozen] for ever, so neither a component nor the name of a kind or of a value
/// ever changes its meaning.
///
/// @param kind the name of its [Diagram]
/// @param language of the words in it
/// @param values in SI, by name; beside a stem only those that a student may know
/// @param printed how values are written, by name
/// @param labels the names of values that are told
/// @param asked the names of values that are asked for
public record ComputedFigure(
        String kind,
        String language,
        Map<String, BigDecimal> values,
        Map<String, String> printed,
        List<String> labels,
        List<String> asked)
        implements Figure {
    private static final String LANGUAGE = "en"; // that of the bank

    public ComputedFigure {
        values = Collections.unmodifiableMap(new TreeMap<>(values));
        printed = Collections.unmodifiableMap(new TreeMap<>(printed));
        labels = labels.stream().sorted().toList();
        asked = asked.stream().sorted().toList();
    }

    /// The drawing beside the stem; none where it only explains the answer.
    static List<Figure> beside(Optional<PosedPicture> picture) {
        return picture.flatMap(p -> p.stem().<Figure>map(stem -> of(p.kind(), stem))).stream()
                .toList();
    }

    /// The drawing that explains the answer, if there is one.
    static List<Figure> explaining(Optional<PosedPicture> picture) {
        return picture.<Figure>map(p -> of(p.kind(), p.solution())).stream().toList();
    }

    static ComputedFigure of(String kind, Situation situation) {
        return new ComputedFigure(
                kind,
                LANGUAGE,
                situation.values().entrySet().stream()
                        .collect(toMap(Map.Entry::getKey, v -> decimal(v.getValue()))),
                situation.printed(),
                List.copyOf(situation.labelled()),
                List.copyOf(situation.asked()));
    }

    private static BigDecimal decimal(double value) {
        return Frozen.plain(BigDecimal.valueOf(value));
    }

    @Override
    public Drawing draw(Purpose purpose, String idPrefix) {
        return diagram().draw(situation(), purpose, idPrefix, language);
    }

    private Diagram diagram() {
        return Diagrams.find(kind)
                .orElseThrow(() -> new IllegalStateException("no drawing is called " + kind));
    }

    private Situation situation() {
        Map<String, Double> si =
                values.entrySet().stream()
                        .collect(toMap(Map.Entry::getKey, v -> v.getValue().doubleValue()));
        return new Situation(si, printed, Set.copyOf(labels), Set.copyOf(asked));
    }
}
