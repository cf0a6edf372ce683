package org.groundline.diagram;

import org.groundline.measure.Units;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/// Drawings of a situation that is given as people write it: `height=600 m`.
record Solution(Diagram diagram, Map<String, Double> values) {
    static Solution of(String kind, String... given) {
        var values = new HashMap<String, Double>();
        for (String one : given) {
            var parts = one.split("[= ]");
            String unit = parts.length > 2 ? parts[2] : "";
            values.put(parts[0], Units.get(unit).toSi(Double.parseDouble(parts[1])));
        }
        return new Solution(Diagrams.find(kind).orElseThrow(), values);
    }

    /// Everything to scale, with all labels.
    DrawnSvg drawn() {
        return DrawnSvg.of(drawing(Purpose.SOLUTION, Set.of()));
    }

    /// The sketch beside a stem that asks for this; the other inputs are told.
    DrawnSvg stemAsking(String asked) {
        return DrawnSvg.of(drawing(Purpose.STEM, Set.of(asked)));
    }

    Drawing drawing(Purpose purpose, Set<String> asked) {
        var told = new HashSet<>(diagram.askable(values.keySet()));
        if (purpose == Purpose.STEM) {
            told.retainAll(values.keySet());
            told.removeAll(asked);
        }
        return diagram.draw(Situation.of(values, told, asked), purpose, "q", "en");
    }
}
