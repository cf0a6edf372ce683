package org.groundline.web.api;

import org.groundline.sitting.KeptAnswer;

import java.time.Instant;
import java.util.UUID;

/// An answer that is kept.
///
/// @param answer as the student gave it
/// @param reading what it was read as: a letter, or a decimal in the item's unit
record GivenView(
        UUID clientId, int seat, int sequence, String answer, String reading, Instant receivedAt) {
    static GivenView of(KeptAnswer kept) {
        return new GivenView(
                kept.clientId(),
                kept.seat(),
                kept.sequence(),
                kept.raw(),
                kept.reading(),
                kept.receivedAt());
    }
}
