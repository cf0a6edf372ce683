package org.groundline.diagram;

import java.util.ArrayList;
import java.util.List;

/// Finds a place for each label: inside the frame, off other texts, and as far as possible off the
/// lines.
///
/// Where none of its own spots is readable, a label stands as near to them as it can. The labels
/// choose one after the other, and then twice again, now that they see where the others stand.
final class Placing {
    private static final double UNREADABLE = 10_000;
    private static final double CROSSED = 40;
    private static final double AIR = 1.5;
    private static final int ROUNDS = 3;

    private final Box frame;
    private final List<Segment> lines;
    private final List<Box> fixed;

    Placing(Box frame, List<Segment> lines, List<Box> fixed) {
        this.frame = frame;
        this.lines = lines;
        this.fixed = fixed;
    }

    /// The chosen spots in the order of the labels.
    List<Spot> place(List<Label> labels) {
        var chosen = new ArrayList<Spot>();
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < labels.size(); i++) {
                var spot = best(labels.get(i), othersThan(i, labels, chosen));
                if (round == 0) {
                    chosen.add(spot);
                } else {
                    chosen.set(i, spot);
                }
            }
        }
        return chosen;
    }

    private List<Box> othersThan(int self, List<Label> labels, List<Spot> chosen) {
        var boxes = new ArrayList<>(fixed);
        for (int i = 0; i < chosen.size(); i++) {
            if (i != self) {
                boxes.add(labels.get(i).boxAt(chosen.get(i)));
            }
        }
        return boxes;
    }

    private Spot best(Label label, List<Box> others) {
        var wished = best(label, label.spots(), others);
        return cost(label, wished, others) < UNREADABLE
                ? wished
                : best(label, Spots.anywhere(frame, wished.anchor()), others);
    }

    /// The spots come by rising cost, so the search ends where a spot alone costs more than the
    /// best so far.
    private Spot best(Label label, List<Spot> spots, List<Box> others) {
        var best = spots.getFirst();
        double lowest = Double.POSITIVE_INFINITY;
        for (Spot spot : spots) {
            if (spot.cost() >= lowest) {
                return best;
            }
            double cost = cost(label, spot, others);
            if (cost < lowest) {
                lowest = cost;
                best = spot;
            }
        }
        return best;
    }

    private double cost(Label label, Spot spot, List<Box> others) {
        var box = label.boxAt(spot);
        double cost = spot.cost() + (box.isInside(frame) ? 0 : UNREADABLE);
        var grown = box.grown(AIR);
        for (Box other : others) {
            cost += grown.overlaps(other) ? UNREADABLE : 0;
        }
        for (Segment line : lines) {
            cost += line.crosses(box) ? CROSSED : 0;
        }
        return cost;
    }
}
