package org.groundline.web.api;

import org.groundline.sitting.Result;
import org.groundline.sitting.Sitting;
import org.groundline.web.request.Percent;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/// What came of a sitting.
///
/// @param gainedPercent cut off, with the decimals of the pass mark; of a topic likewise
/// @param itemsToTalkThrough safety-critical items not answered rightly
/// @param scoringVersion the rule of marking that was followed
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
        int scoringVersion,
        List<TopicMarks> topics,
        List<ExplainedView> items) {
    record TopicMarks(
            String topic, int marksHundredths, int possibleHundredths, String gainedPercent) {
        static TopicMarks of(Result.TopicMarks marks, int passMark) {
            return new TopicMarks(
                    marks.topic(),
                    marks.hundredths(),
                    marks.possible(),
                    Percent.gainedText(marks.hundredths(), marks.possible(), passMark));
        }
    }

    static ResultView of(Result result) {
        Sitting.Facts facts = result.sitting().facts();
        int passMark = result.rules().passMark();
        return new ResultView(
                facts.id(),
                facts.scope(),
                facts.startedAt(),
                result.sitting().at(),
                result.sitting().by(),
                Percent.markText(passMark),
                result.hundredths(),
                result.possible(),
                Percent.gainedText(result.hundredths(), result.possible(), passMark),
                result.passed(),
                result.toTalkThrough(),
                result.scoringVersion(),
                result.topics().stream().map(t -> TopicMarks.of(t, passMark)).toList(),
                result.items().stream().map(ExplainedView::of).toList());
    }
}
