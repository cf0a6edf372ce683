package org.groundline.ledger;

import org.groundline.database.SubjectId;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/// One thing to be written into the ledger.
///
/// @param kind what it is
/// @param happenedAt when it took place; when it was written down is the ledger's own business
/// @param subject whom it is about
/// @param actor who did it; empty for the program itself
/// @param facts ids, codes, numbers and words of closed lists; never a name, never free text
public record Entry(
        EntryKind kind,
        Instant happenedAt,
        Optional<SubjectId> subject,
        Optional<SubjectId> actor,
        Map<String, Object> facts) {
    public Entry {
        facts = Map.copyOf(facts);
    }
}
