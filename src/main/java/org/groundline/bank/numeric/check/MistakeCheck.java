package org.groundline.bank.numeric.check;

import org.groundline.bank.numeric.goal.Key;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.working.Instance;
import org.groundline.bank.numeric.working.Mistake;
import org.groundline.bank.numeric.working.MistakeRanges;

import java.util.List;

/// Whether the mistakes are far enough from the key in most cases.
final class MistakeCheck implements GoalCheck {
    private static final double APART_SHARE = 0.8;

    private final List<Mistake> mistakes;
    private final Key key;
    private final int[] tooNear;
    private int seen;

    MistakeCheck(List<Mistake> mistakes, Key key) {
        this.mistakes = mistakes;
        this.key = key;
        this.tooNear = new int[mistakes.size()];
    }

    @Override
    public void see(Instance instance) {
        seen++;
        for (int i = 0; i < tooNear.length; i++) {
            if (!MistakeRanges.isApart(instance.mistake(i), instance.answer(), key.tolerance())) {
                tooNear[i]++;
            }
        }
    }

    @Override
    public void report(Faults faults) {
        for (int i = 0; i < tooNear.length; i++) {
            if (tooNear[i] > (1 - APART_SHARE) * seen) {
                faults.add(
                        "mistakes[%d].formula".formatted(i),
                        "%s is nearer than %.0f tolerances to the key in %d of %d cases"
                                .formatted(
                                        mistakes.get(i).cause().misconception(),
                                        MistakeRanges.APART,
                                        tooNear[i],
                                        seen),
                        "draw values that tell the two apart, or drop the mistake");
            }
        }
    }
}
