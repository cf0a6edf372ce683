package org.groundline.diagram;

import java.util.Comparator;
import java.util.List;

/// Lines of text, one beneath the other, that may stand together in several places; the cheapest
/// comes first.
record Label(List<TextLine> lines, List<Spot> spots) {
    Label {
        lines = List.copyOf(lines);
        spots = spots.stream().sorted(Comparator.comparingDouble(Spot::cost)).toList();
        if (lines.isEmpty() || spots.isEmpty()) {
            throw new IllegalArgumentException("a label without text or place: " + lines);
        }
    }

    Box boxAt(Spot spot) {
        double width = lines.stream().mapToDouble(TextLine::width).max().orElse(0);
        return spot.box(width, lines.size() * Lettering.HEIGHT);
    }
}
