package org.groundline.bank.numeric.check;

import org.groundline.bank.numeric.goal.Decision;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.working.Instance;

/// Whether each option is right often enough, so that none can be struck out unread.
final class OptionCheck implements GoalCheck {
    private static final double RIGHT_SHARE = 0.1;

    private final Decision decision;
    private final int[] right;
    private int seen;

    OptionCheck(Decision decision) {
        this.decision = decision;
        this.right = new int[decision.options().size()];
    }

    @Override
    public void see(Instance instance) {
        seen++;
        right[decision.right(instance.answer())]++;
    }

    @Override
    public void report(Faults faults) {
        for (int i = 0; i < right.length; i++) {
            if (right[i] < RIGHT_SHARE * seen) {
                faults.add(
                        "options[%d].text".formatted(i),
                        "this option is right in %d of %d cases".formatted(right[i], seen),
                        "draw values that make each option right in a tenth of the cases, or move"
                                + " the bounds");
            }
        }
    }
}
