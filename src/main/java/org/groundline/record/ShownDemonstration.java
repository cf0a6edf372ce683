package org.groundline.record;

import org.groundline.bank.Demonstration;
import org.groundline.database.SubjectId;

import java.time.Instant;
import java.util.Optional;

/// A demonstration of the syllabus, and whether it was observed.
public record ShownDemonstration(Demonstration demonstration, Optional<Observation> observed) {
    /// By whom and when.
    public record Observation(SubjectId observer, Instant at) {}
}
