package org.groundline.sitting;

import org.groundline.database.SubjectId;

import java.time.Instant;
import java.util.UUID;

/// A test opened for an intake: its students may begin it between two instants.
public record Opening(
        UUID id,
        Blueprint blueprint,
        UUID intake,
        SubjectId openedBy,
        Instant opensAt,
        Instant closesAt,
        String place) {
    /// Whether it may be begun now.
    public boolean isOpenAt(Instant now) {
        return !now.isBefore(opensAt) && now.isBefore(closesAt);
    }
}
