package org.groundline.sitting;

import org.groundline.bank.Key;
import org.groundline.school.PolicyRules;

import java.util.List;
import java.util.Optional;

/// What came of a sitting that was handed in.
///
/// @param rules the rules it was taken under
/// @param scoringVersion the rule of marking that the scoring run followed
/// @param hundredths marks gained, in hundredths of a mark
/// @param possible marks to be had, in hundredths
/// @param passed as the scoring run decided
/// @param topics in the order of their ids
/// @param items in the order of the paper
public record Result(
        Sitting.HandedIn sitting,
        PolicyRules rules,
        int scoringVersion,
        int hundredths,
        int possible,
        boolean passed,
        List<TopicMarks> topics,
        List<ItemResult> items) {
    public Result {
        topics = List.copyOf(topics);
        items = List.copyOf(items);
    }

    /// The marks of one topic, in hundredths of a mark.
    public record TopicMarks(String topic, int hundredths, int possible) {}

    /// An item with everything that may be shown after hand-in.
    public record ItemResult(Item item, Key key, Mark mark, Optional<KeptAnswer> answer) {}

    /// How many safety-critical items were not answered rightly: each needs a talk with an
    /// instructor.
    public int toTalkThrough() {
        return (int)
                items.stream()
                        .filter(
                                i ->
                                        i.item().safetyCritical()
                                                && i.mark().verdict() != Verdict.RIGHT)
                        .count();
    }
}
