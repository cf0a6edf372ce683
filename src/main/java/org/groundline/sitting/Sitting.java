package org.groundline.sitting;

import org.groundline.database.SubjectId;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/// One student sitting one paper.
///
/// States and what holds in each. *Open*: answers are taken until the deadline. *Handed in*: no
/// answer is taken; marks exist. *Annulled*: it counts for nothing; whatever was given stays.
public sealed interface Sitting {
    /// What every sitting has, in whatever state.
    Facts facts();

    /// Being sat.
    ///
    /// @param deadline when the clock hands it in; empty in practice
    record Open(Facts facts, Optional<Instant> deadline) implements Sitting {}

    /// Handed in by the student, the clock or staff.
    record HandedIn(Facts facts, Instant at, String by) implements Sitting {}

    /// Set aside by staff.
    record Annulled(Facts facts, Instant at) implements Sitting {}

    /// @param policy the version of the policy that it is taken under
    /// @param scope the module of a test, the topic of a practice
    record Facts(
            UUID id,
            Stakes stakes,
            UUID paper,
            SubjectId subject,
            Optional<UUID> opening,
            int policy,
            String scope,
            Instant startedAt) {}
}
