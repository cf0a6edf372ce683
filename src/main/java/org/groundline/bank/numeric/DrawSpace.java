package org.groundline.bank.numeric;

import org.groundline.chance.SeededDraw;

import java.util.List;
import java.util.function.Consumer;

/// All combinations of drawn values. A choice is the place of each value in its draw's list.
record DrawSpace(List<Draw> draws) {
    static final int EXAMINED = 20_000;
    static final long LARGEST = 10_000_000;

    private static final long SAMPLING_SEED = 0;

    /// The number of combinations, or [#LARGEST] + 1 where there are more.
    long size() {
        long size = 1;
        for (Draw draw : draws) {
            size = Math.min(LARGEST + 1, size * draw.values().size());
        }
        return size;
    }

    int[] choose(SeededDraw draw) {
        int[] choice = new int[draws.size()];
        for (int i = 0; i < choice.length; i++) {
            choice[i] = draw.below(draws.get(i).values().size());
        }
        return choice;
    }

    double[] valuesOf(int[] choice) {
        double[] values = new double[choice.length];
        for (int i = 0; i < choice.length; i++) {
            values[i] = draws.get(i).values().get(choice[i]).si();
        }
        return values;
    }

    /// Shows every combination once, or a sample that is always the same where there are more than
    /// [#EXAMINED].
    void examine(Consumer<int[]> examiner) {
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
            int count = draws.get(i).values().size();
            choice[i] = (int) (rest % count);
            rest /= count;
        }
        return choice;
    }
}
