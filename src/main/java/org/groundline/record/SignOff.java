package org.groundline.record;

import org.groundline.database.SubjectId;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/// A named instructor's entry that a module's theory is complete, and its counter-entry if there is
/// one.
///
/// @param basis the sitting it rests on
public record SignOff(
        UUID id, UUID basis, SubjectId instructor, Instant at, Optional<Reversal> reversal) {
    /// @param note where the reason lies
    public record Reversal(SubjectId by, Instant at, UUID note) {}

    /// Whether it stands.
    public boolean stands() {
        return reversal.isEmpty();
    }
}
