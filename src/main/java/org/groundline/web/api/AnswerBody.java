package org.groundline.web.api;

import org.groundline.error.Refusal;
import org.groundline.sitting.GivenAnswer;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;

/// An answer to an item, as sent.
///
/// @param sequence counts up with each answer on the seat
/// @param answer a letter, or a number as typed, with or without its unit
/// @param clientAt the client's clock; evidence, never decides
record AnswerBody(UUID item, int seat, int sequence, String answer, Optional<Instant> clientAt) {
    private static final int HIGHEST_SEQUENCE = 1_000_000;

    /// @param now kept to the microsecond, as the database has it, so that a receipt reads the same
    ///   when it is given again
    GivenAnswer given(UUID clientId, Instant now) {
        if (sequence > HIGHEST_SEQUENCE) {
            throw new Refusal.Invalid("sequence", "Count the answers of a seat up from 0.");
        }
        Instant receivedAt = now.truncatedTo(ChronoUnit.MICROS);
        return new GivenAnswer(clientId, item, seat, sequence, clientAt, receivedAt, answer);
    }
}
