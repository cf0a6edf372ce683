package org.groundline.bank.numeric.check;

import org.groundline.bank.numeric.goal.Decision;
import org.groundline.bank.numeric.goal.Key;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.working.Instance;
import org.groundline.bank.numeric.working.Working;

/// What the goal of a template asks of all its cases together: it sees each that can be posed, and
/// then reports.
sealed interface GoalCheck permits MistakeCheck, OptionCheck {
    static GoalCheck of(Working working) {
        return switch (working.goal()) {
            case Key key -> new MistakeCheck(working.mistakes(), key);
            case Decision decision -> new OptionCheck(decision);
        };
    }

    void see(Instance instance);

    void report(Faults faults);
}
