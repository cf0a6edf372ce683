package org.groundline.bank.numeric.draw;

import org.groundline.bank.numeric.formula.NoAnswer;
import org.groundline.bank.numeric.formula.Scope;
import org.groundline.chance.SeededDraw;
import org.groundline.measure.Dimension;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/// All combinations of drawn values. A choice is the place of each value in its draw's list; what
/// is computed from others has one place only.
///
/// @param dependents those of the draws that are computed, each after all that it needs
public record DrawSpace(List<Draw> draws, List<Draw.Dependent> dependents) {
    /// How many combinations are examined at most; of more than these, a sample is.
    public static final int EXAMINED = 20_000;

    /// A template that can draw more combinations than this does not load.
    public static final long LARGEST = 10_000_000;

    private static final long SAMPLING_SEED = 0;

    /// The number of combinations, or [#LARGEST] + 1 where there are more.
    public long size() {
        long size = 1;
        for (Draw draw : draws) {
            size = Math.min(LARGEST + 1, size * draw.count());
        }
        return size;
    }

    /// The drawn names, each in the place of its value.
    public Scope scope() {
        Map<String, Dimension> names = new LinkedHashMap<>();
        draws.forEach(draw -> names.put(draw.name(), draw.unit().dimension()));
        return new Scope(names);
    }

    /// Chooses one of the combinations; the same draw chooses the same.
    public int[] choose(SeededDraw draw) {
        int[] choice = new int[draws.size()];
        for (int i = 0; i < choice.length; i++) {
            choice[i] = draw.below(draws.get(i).count());
        }
        return choice;
    }

    /// @throws NoAnswer if a computed value has none
    public double[] valuesOf(int[] choice) {
        double[] values = new double[choice.length];
        for (int i = 0; i < choice.length; i++) {
            if (draws.get(i) instanceof Draw.Chosen chosen) {
                values[i] = chosen.values().get(choice[i]).si();
            }
        }
        for (Draw.Dependent dependent : dependents) {
            values[dependent.slot()] = dependent.value(values);
        }
        return values;
    }

    /// Shows every combination once, or a sample that is always the same where there are more than
    /// [#EXAMINED].
    public void examine(Consumer<int[]> examiner) {
        long size = size();
        if (size <= EXAMINED) {
            for (long number = 0; number < size; number++) {
                examiner.accept(choice(number));
            }
        } else {
            var draw = new SeededDraw(SAMPLING_SEED);
            for (int i = 0; i < EXAMINED; i++) {
                examiner.accept(choose(draw));
            }
        }
    }

    private int[] choice(long number) {
        int[] choice = new int[draws.size()];
        long rest = number;
        for (int i = 0; i < choice.length; i++) {
            int count = draws.get(i).count();
            choice[i] = (int) (rest % count);
            rest /= count;
        }
        return choice;
    }
}
