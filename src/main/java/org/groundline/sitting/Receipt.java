package org.groundline.sitting;

import java.time.Instant;
import java.util.UUID;

/// Says that an answer is kept: it is in the database and survives a crash.
///
/// @param echo what the program read, such as "5.3 km = 5300 m"
/// @param replayed whether it had been kept before and nothing changed now
public record Receipt(
        UUID clientId, UUID item, Instant receivedAt, String echo, boolean replayed) {}
