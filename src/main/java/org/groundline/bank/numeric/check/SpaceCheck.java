package org.groundline.bank.numeric.check;

import org.groundline.bank.numeric.draw.Draw;
import org.groundline.bank.numeric.draw.DrawSpace;
import org.groundline.bank.numeric.formula.NoAnswer;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.working.Instance;
import org.groundline.bank.numeric.working.Parts;
import org.groundline.measure.Rounding;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/// Examines the drawn values of a template: is there an answer for all of them, a plausible one,
/// and does it keep what its goal asks?
public final class SpaceCheck {
    static final int FEWEST = 50;

    private final Parts parts;
    private final Faults faults;
    private final GoalCheck goal;
    private final Set<String> told = new HashSet<>();
    private final Set<List<Double>> questions = new HashSet<>();
    private final int[] toldSlots;
    private int rejected;
    private int unclear;

    /// @param faults takes what the examination finds
    public SpaceCheck(Parts parts, Faults faults) {
        this.parts = parts;
        this.faults = faults;
        this.goal = GoalCheck.of(parts.working());
        List<Draw> draws = parts.space().draws();
        this.toldSlots =
                IntStream.range(0, draws.size()).filter(i -> parts.tells(draws.get(i))).toArray();
    }

    /// Examines all combinations, or a sample where there are too many, and notes what it finds.
    public void check() {
        if (parts.space().size() > DrawSpace.LARGEST) {
            faults.add(
                    "draw",
                    "there are more than %d combinations".formatted(DrawSpace.LARGEST),
                    "draw fewer values or in wider steps");
            return;
        }
        parts.space().examine(this::examine);
        checkRejected(Math.min(parts.space().size(), DrawSpace.EXAMINED));
        goal.report(faults);
    }

    private void checkRejected(long examined) {
        long left = examined - rejected - unclear;
        if (2 * left < examined && unclear == 0) {
            faults.add(
                    "where",
                    "it rejects %d of %d combinations".formatted(rejected, examined),
                    "draw from narrower ranges, so that at most half are rejected");
        } else if (2 * left < examined) {
            faults.add(
                    "decide.bounds",
                    "%d of %d combinations are too near to a bound and %d are rejected by the where"
                            .formatted(unclear, examined, rejected),
                    "draw values further from the bounds, so that at most half are left out");
        }
        if (questions.size() < FEWEST) {
            faults.add(
                    "draw",
                    "there are only %d different questions".formatted(questions.size()),
                    "draw more values; at least %d are needed".formatted(FEWEST));
        }
    }

    private void examine(int[] choice) {
        try {
            double[] values = parts.space().valuesOf(choice);
            if (parts.working().allows(values)) {
                examine(choice, parts.solve(values));
            } else {
                rejected++;
            }
        } catch (NoAnswer none) {
            tellOnce(none.at(), none.reason(), choice, "narrow the draws or add a where");
        }
    }

    private void examine(int[] choice, Instance instance) {
        var asked = parts.goal();
        if (!asked.range().holds(instance.answer())) {
            String answer = asked.unit().print(Rounding.significant(instance.answer(), 4));
            tellOnce(
                    asked.at() + ".between",
                    "the answer is %s".formatted(answer),
                    choice,
                    "narrow the draws, or widen the range if such an answer is right");
        }
        if (asked.isClear(instance.answer())) {
            goal.see(instance);
            count(instance);
        } else {
            unclear++;
        }
    }

    /// Questions that tell the same values are one, whatever these were computed from. Whether
    /// there are enough is all that matters.
    private void count(Instance instance) {
        if (questions.size() < FEWEST) {
            questions.add(IntStream.of(toldSlots).mapToObj(instance::value).toList());
        }
    }

    /// Reports the first case at a place, with its values; the others are most often the same.
    private void tellOnce(String at, String problem, int[] choice, String remedy) {
        if (told.add(at)) {
            faults.add(at, "%s for %s".formatted(problem, parts.chosen(choice)), remedy);
        }
    }
}
