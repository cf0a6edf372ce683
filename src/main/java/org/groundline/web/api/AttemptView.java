package org.groundline.web.api;

import org.groundline.record.Attempt;

import java.time.Instant;
import java.util.UUID;

/// A test that was handed in.
record AttemptView(
        UUID sitting,
        Instant handedInAt,
        int marksHundredths,
        int possibleHundredths,
        String gainedPercent,
        boolean passed) {
    static AttemptView of(Attempt attempt) {
        return new AttemptView(
                attempt.sitting(),
                attempt.handedInAt(),
                attempt.hundredths(),
                attempt.possible(),
                Percent.of(attempt.hundredths(), attempt.possible()),
                attempt.passed());
    }
}
