package org.groundline.sitting;

import org.groundline.error.Refusal;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/// What a browser sends for an item.
///
/// @param clientId chosen by the browser; the same one twice is the same answer
/// @param seat the seat it was given on
/// @param sequence counts up with each answer on that seat
/// @param clientTime the browser's clock; evidence, never decides
/// @param receivedAt when it arrived, by the server's clock
/// @param raw a letter, or a number as typed; at most 64 characters
public record GivenAnswer(
        UUID clientId,
        UUID item,
        int seat,
        int sequence,
        Optional<Instant> clientTime,
        Instant receivedAt,
        String raw) {
    private static final int LONGEST = 64;

    public GivenAnswer {
        if (raw.isBlank()) {
            throw new Refusal.Invalid(
                    "answer", "There is no answer yet. Choose a letter or type a number.");
        }
        if (raw.length() > LONGEST) {
            throw new Refusal.Invalid(
                    "answer", "An answer has at most 64 characters; this one is much longer.");
        }
        if (seat < 1 || sequence < 0) {
            throw new Refusal.Invalid("seat", "Seats count from 1 and sequences from 0.");
        }
    }
}
