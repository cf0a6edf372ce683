package org.groundline.bank;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/// Options in the order in which they are shown, each with the belief behind it; none stands behind
/// the right one.
record Lettered(List<Lettered.Choice> choices) {
    private static final List<String> LETTERS = List.of("A", "B", "C", "D");

    record Choice(String text, Optional<Belief> belief) {}

    Lettered {
        choices = List.copyOf(choices);
    }

    List<String> texts() {
        return choices.stream().map(Choice::text).toList();
    }

    Key.Choice key(
            String rationale, List<String> sources, List<String> steps, List<Figure> figures) {
        Map<String, Belief> beliefs = new TreeMap<>();
        String right = "";
        for (int i = 0; i < choices.size(); i++) {
            String letter = LETTERS.get(i);
            Optional<Belief> belief = choices.get(i).belief();
            belief.ifPresent(wrong -> beliefs.put(letter, wrong));
            right = belief.isEmpty() ? letter : right;
        }
        return new Key.Choice(right, beliefs, rationale, sources, steps, figures);
    }
}
