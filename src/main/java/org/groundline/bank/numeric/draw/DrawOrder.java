package org.groundline.bank.numeric.draw;

import org.groundline.bank.numeric.draw.Draw.Dependent;
import org.groundline.bank.numeric.source.Faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Puts dependent draws into an order in which they can be computed, each after those it needs.
record DrawOrder(Faults faults) {
    /// The draws in that order, or nothing after noting a circle.
    Optional<List<Dependent>> of(List<Dependent> draws) {
        var waiting = new ArrayList<>(draws);
        var ordered = new ArrayList<Dependent>();
        while (!waiting.isEmpty()) {
            Optional<Dependent> next =
                    waiting.stream().filter(draw -> needed(draw, waiting).isEmpty()).findFirst();
            if (next.isEmpty()) {
                note(circle(waiting));
                return Optional.empty();
            }
            waiting.remove(next.get());
            ordered.add(next.get());
        }
        return Optional.of(List.copyOf(ordered));
    }

    /// One of the draws that this one needs.
    private static Optional<Dependent> needed(Dependent draw, List<Dependent> among) {
        return among.stream()
                .filter(other -> draw.formula().names().anyMatch(other.name()::equals))
                .findFirst();
    }

    /// As each of these needs another of them, to go from need to need comes back in the end. What
    /// was passed before the place of return only leads to the circle.
    private static List<Dependent> circle(List<Dependent> waiting) {
        var passed = new ArrayList<Dependent>();
        Dependent draw = waiting.getFirst();
        while (!passed.contains(draw)) {
            passed.add(draw);
            draw = needed(draw, waiting).orElseThrow();
        }
        return passed.subList(passed.indexOf(draw), passed.size());
    }

    private void note(List<Dependent> circle) {
        List<String> names = circle.stream().map(Dependent::name).toList();
        faults.add(
                "draw.%s.formula".formatted(names.getFirst()),
                "it is computed in a circle: %s needs %s"
                        .formatted(String.join(" needs ", names), names.getFirst()),
                "draw one of them from a range or a list");
    }
}
