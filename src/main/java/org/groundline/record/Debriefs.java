package org.groundline.record;

import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.ledger.Entry;
import org.groundline.ledger.EntryKind;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// Talks about safety-critical answers that were wrong or missing.
public final class Debriefs {
    private final Foundation foundation;

    public Debriefs(Foundation foundation) {
        this.foundation = foundation;
    }

    /// What came of a talk.
    public enum Outcome {
        EXPLAINED_BACK("explained back"),
        NOT_YET_UNDERSTOOD("not yet understood");

        private final String word;

        Outcome(String word) {
            this.word = word;
        }

        /// The word on pages and in the table.
        public String word() {
            return word;
        }

        /// @throws Refusal.Invalid if no outcome is called so
        public static Outcome ofWord(String word) {
            for (Outcome outcome : values()) {
                if (outcome.word.equals(word)) {
                    return outcome;
                }
            }
            throw new Refusal.Invalid(
                    "outcome", "A talk ends with “explained back” or “not yet understood”.");
        }
    }

    /// Enters a talk that took place now. It settles the item when the student explained it back.
    ///
    /// @throws Refusal.NotFound if the item is not on the student's list of talks
    /// @throws Refusal.Conflict if the student and the instructor are one
    public void enter(Actor actor, SubjectId student, UUID item, Outcome outcome, String note) {
        actor.require(Action.ENTER_DEBRIEF);
        Notes.requireNotOwn(actor, student);
        foundation
                .database()
                .doInSchool(
                        actor.school().id(), tx -> enter(tx, actor, student, item, outcome, note));
    }

    private void enter(
            DSLContext tx,
            Actor actor,
            SubjectId student,
            UUID item,
            Outcome outcome,
            String note) {
        var rows = new RecordRepository(tx, actor.school().id());
        boolean listed =
                rows.listToTalkThrough(java.util.List.of(student)).stream()
                        .anyMatch(e -> e.what().item().equals(item));
        if (!listed) {
            throw new Refusal.NotFound(
                    "This answer is not on the student's list of talks, or was settled already.");
        }
        Instant now = foundation.now();
        UUID id = foundation.ids().next();
        Optional<UUID> noteId = new Notes(foundation).write(tx, actor, student, note);
        new EntryRepository(tx, actor.school().id())
                .insertDebrief(
                        id,
                        new EntryRepository.Deed(student, actor.subject(), now, noteId),
                        item,
                        outcome);
        Map<String, Object> facts =
                Map.of(
                        "debrief",
                        id.toString(),
                        "item",
                        item.toString(),
                        "outcome",
                        outcome.word());
        var entry =
                new Entry(
                        EntryKind.DEBRIEF,
                        now,
                        Optional.of(student),
                        Optional.of(actor.subject()),
                        facts);
        foundation.ledger().write(tx, actor.school().id(), entry);
    }
}
