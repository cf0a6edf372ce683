package org.groundline.bank.numeric;

import org.groundline.measure.Rounding;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/// Examines the drawn values of a template: is there an answer for all of them, a plausible one,
/// and are the mistakes far enough from it?
final class SpaceCheck {
    static final int FEWEST = 50;

    private static final double APART_SHARE = 0.8;

    private final Parts parts;
    private final Faults faults;
    private final Set<String> told = new HashSet<>();
    private final int[] tooNear;
    private int rejected;
    private int solved;

    SpaceCheck(Parts parts, Faults faults) {
        this.parts = parts;
        this.faults = faults;
        this.tooNear = new int[parts.working().mistakes().size()];
    }

    void check() {
        if (parts.space().size() > DrawSpace.LARGEST) {
            faults.add(
                    "draw",
                    "there are more than %d combinations".formatted(DrawSpace.LARGEST),
                    "draw fewer values or in wider steps");
            return;
        }
        parts.space().examine(this::examine);
        long examined = Math.min(parts.space().size(), DrawSpace.EXAMINED);
        if (2L * rejected > examined) {
            faults.add(
                    "where",
                    "it rejects %d of %d combinations".formatted(rejected, examined),
                    "draw from narrower ranges, so that at most half are rejected");
        }
        if (examined - rejected < FEWEST) {
            faults.add(
                    "draw",
                    "there are only %d different questions".formatted(examined - rejected),
                    "draw more values; at least %d are needed".formatted(FEWEST));
        }
        checkMistakes();
    }

    private void examine(int[] choice) {
        double[] values = parts.space().valuesOf(choice);
        try {
            if (parts.working().allows(values)) {
                examine(choice, parts.working().solve(values));
            } else {
                rejected++;
            }
        } catch (NoAnswer none) {
            tellOnce(none.at(), none.reason(), choice, "narrow the draws or add a where");
        }
    }

    private void examine(int[] choice, Instance instance) {
        var key = parts.key();
        if (!key.isPlausible(instance.answer())) {
            String answer = key.unit().print(Rounding.significant(instance.answer(), 4));
            tellOnce(
                    "answer.between",
                    "the answer is %s".formatted(answer),
                    choice,
                    "narrow the draws, or widen the range if such an answer is right");
        }
        solved++;
        for (int i = 0; i < tooNear.length; i++) {
            if (!MistakeRanges.isApart(instance.mistake(i), instance.answer(), key.tolerance())) {
                tooNear[i]++;
            }
        }
    }

    private void checkMistakes() {
        List<Mistake> mistakes = parts.working().mistakes();
        for (int i = 0; i < tooNear.length; i++) {
            if (tooNear[i] > (1 - APART_SHARE) * solved) {
                faults.add(
                        "mistakes[%d].formula".formatted(i),
                        "%s is nearer than %.0f tolerances to the key in %d of %d cases"
                                .formatted(
                                        mistakes.get(i).misconception(),
                                        MistakeRanges.APART,
                                        tooNear[i],
                                        solved),
                        "draw values that tell the two apart, or drop the mistake");
            }
        }
    }

    /// Reports the first case at a place, with its values; the others are most often the same.
    private void tellOnce(String at, String problem, int[] choice, String remedy) {
        if (told.add(at)) {
            faults.add(at, "%s for %s".formatted(problem, parts.printed(choice)), remedy);
        }
    }
}
