package org.groundline.demo;

import org.groundline.chance.SeededDraw;

import java.util.List;

/// The draws of one simulated matter.
record Chance(SeededDraw draw) {
    private static final int FINE = 1_000_000;

    /// The draws of a part of the matter, which depend on its label only.
    Chance of(String label) {
        return new Chance(draw.split(label));
    }

    /// True with a probability.
    boolean happens(double probability) {
        return draw.below(FINE) < probability * FINE;
    }

    /// A whole number between two, both included.
    int between(int least, int most) {
        return least + draw.below(most - least + 1);
    }

    /// A number between two, fine enough to look continuous.
    double between(double least, double most) {
        return least + (most - least) * draw.below(FINE) / FINE;
    }

    <T> T oneOf(List<T> elements) {
        return elements.get(draw.below(elements.size()));
    }
}
