package org.groundline.record;

import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.school.Actor;
import org.jooq.DSLContext;

import java.util.Optional;
import java.util.UUID;

/// Free text beside a record, kept apart from it so that it can be erased.
final class Notes {
    private static final int LONGEST = 4_000;

    private final Foundation foundation;

    Notes(Foundation foundation) {
        this.foundation = foundation;
    }

    /// Keeps a note about a student and returns its id; empty where nothing was written.
    Optional<UUID> write(DSLContext tx, Actor actor, SubjectId about, String text) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        if (text.strip().length() > LONGEST) {
            throw new Refusal.Invalid("note", "A note has at most 4000 letters.");
        }
        UUID id = foundation.ids().next();
        var deed =
                new EntryRepository.Deed(about, actor.subject(), foundation.now(), Optional.of(id));
        new EntryRepository(tx, actor.school().id()).insertNote(deed, text.strip());
        return Optional.of(id);
    }

    /// Nobody vouches for themselves.
    static void requireNotOwn(Actor actor, SubjectId student) {
        if (actor.subject().equals(student)) {
            throw new Refusal.Conflict(
                    "Nobody can enter this for themselves. Ask another instructor.");
        }
    }
}
