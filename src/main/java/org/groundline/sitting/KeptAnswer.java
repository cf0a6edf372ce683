package org.groundline.sitting;

import java.time.Instant;
import java.util.UUID;

/// An answer that was acknowledged.
///
/// @param raw as the student typed it
/// @param reading a letter, or a decimal in the item's unit
public record KeptAnswer(
        UUID clientId,
        UUID item,
        int seat,
        int sequence,
        Instant receivedAt,
        String raw,
        String reading) {}
