package org.groundline.web.api;

import org.groundline.record.Attempt;
import org.groundline.web.request.Percent;

import java.time.Instant;
import java.util.UUID;

/// A test that was handed in.
///
/// @param passMarkPercent of the policy it was taken under
/// @param gainedPercent cut off, with the decimals of the pass mark
record AttemptView(
        UUID sitting,
        Instant handedInAt,
        String passMarkPercent,
        int marksHundredths,
        int possibleHundredths,
        String gainedPercent,
        boolean passed) {
    static AttemptView of(Attempt attempt) {
        return new AttemptView(
                attempt.sitting(),
                attempt.handedInAt(),
                Percent.markText(attempt.passMark()),
                attempt.hundredths(),
                attempt.possible(),
                Percent.gainedText(attempt.hundredths(), attempt.possible(), attempt.passMark()),
                attempt.passed());
    }
}
