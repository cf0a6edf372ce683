package org.groundline.web.api;

import org.groundline.sitting.Result;
import org.groundline.sitting.Sitting;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/// What came of a sitting.
///
/// @param gainedPercent cut off after two digits; `passed` says which side of the mark it is on
/// @param itemsToTalkThrough safety-critical items not answered rightly
record ResultView(
        UUID sitting,
        String module,
        Instant startedAt,
        Instant handedInAt,
        String handedInBy,
        String passMarkPercent,
        int marksHundredths,
        int possibleHundredths,
        String gainedPercent,
        boolean passed,
        int itemsToTalkThrough,
        List<TopicMarks> topics,
        List<ExplainedView> items) {
    record TopicMarks(
            String topic, int marksHundredths, int possibleHundredths, String gainedPercent) {
        static TopicMarks of(Result.TopicMarks marks) {
            return new TopicMarks(
                    marks.topic(),
                    marks.hundredths(),
                    marks.possible(),
                    Percent.of(marks.hundredths(), marks.possible()));
        }
    }

    static ResultView of(Result result) {
        Sitting.Facts facts = result.sitting().facts();
        return new ResultView(
                facts.id(),
                facts.scope(),
                facts.startedAt(),
                result.sitting().at(),
                result.sitting().by(),
                Percent.ofHundredths(result.rules().passMark()),
                result.hundredths(),
                result.possible(),
                Percent.of(result.hundredths(), result.possible()),
                result.passed(),
                result.toTalkThrough(),
                result.topics().stream().map(TopicMarks::of).toList(),
                result.items().stream().map(ExplainedView::of).toList());
    }
}
