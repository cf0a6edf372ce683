package org.groundline.diagram;

import java.util.Map;
import java.util.Set;

/// What is drawn: the values, and which of them are told or asked.
///
/// @param values in SI, by name
/// @param printed how a value is written where the stem writes it in its own way, by name, such as
///   "20 kt"; otherwise it is written in the unit of its [Diagram]
/// @param labelled names of values that stand in the picture
/// @param asked names of values that are asked for
public record Situation(
        Map<String, Double> values,
        Map<String, String> printed,
        Set<String> labelled,
        Set<String> asked) {
    public Situation {
        values = Map.copyOf(values);
        printed = Map.copyOf(printed);
        labelled = Set.copyOf(labelled);
        asked = Set.copyOf(asked);
    }

    public static Situation of(
            Map<String, Double> values, Set<String> labelled, Set<String> asked) {
        return new Situation(values, Map.of(), labelled, asked);
    }

    public Situation withPrinted(Map<String, String> texts) {
        return new Situation(values, texts, labelled, asked);
    }
}
