package org.groundline.record;

import static org.groundline.database.schema.Tables.DEBRIEF;
import static org.groundline.database.schema.Tables.DEMONSTRATION;
import static org.groundline.database.schema.Tables.NOTE;
import static org.groundline.database.schema.Tables.REVERSAL;
import static org.groundline.database.schema.Tables.SIGN_OFF;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/// Adds the rows of the training record; there is no way to change one.
final class EntryRepository {
    private final DSLContext sql;
    private final UUID school;

    EntryRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    /// What every entry has: about whom, by whom, when, with which note.
    record Deed(SubjectId student, SubjectId by, Instant at, Optional<UUID> note) {}

    void insertNote(Deed deed, String text) {
        sql.insertInto(NOTE)
                .set(NOTE.SCHOOL_ID, school)
                .set(NOTE.ID, deed.note().orElseThrow())
                .set(NOTE.SUBJECT_ID, deed.student().value())
                .set(NOTE.WRITTEN_BY, deed.by().value())
                .set(NOTE.WRITTEN_AT, deed.at())
                .set(NOTE.TEXT, text)
                .execute();
    }

    /// Returns the text of a note, unless it was erased.
    Optional<String> findNote(UUID id) {
        return sql.select(NOTE.TEXT)
                .from(NOTE)
                .where(NOTE.SCHOOL_ID.eq(school), NOTE.ID.eq(id))
                .fetchOptional(NOTE.TEXT);
    }

    void insertDebrief(UUID id, Deed deed, UUID item, Debriefs.Outcome outcome) {
        sql.insertInto(DEBRIEF)
                .set(DEBRIEF.SCHOOL_ID, school)
                .set(DEBRIEF.ID, id)
                .set(DEBRIEF.SUBJECT_ID, deed.student().value())
                .set(DEBRIEF.ITEM_ID, item)
                .set(DEBRIEF.DEBRIEFED_BY, deed.by().value())
                .set(DEBRIEF.OUTCOME, outcome.word())
                .set(DEBRIEF.HAPPENED_AT, deed.at())
                .set(DEBRIEF.ENTERED_AT, deed.at())
                .set(DEBRIEF.NOTE_ID, deed.note().orElse(null))
                .execute();
    }

    void insertDemonstration(UUID id, Deed deed, String demonstration) {
        sql.insertInto(DEMONSTRATION)
                .set(DEMONSTRATION.SCHOOL_ID, school)
                .set(DEMONSTRATION.ID, id)
                .set(DEMONSTRATION.SUBJECT_ID, deed.student().value())
                .set(DEMONSTRATION.DEMONSTRATION_, demonstration)
                .set(DEMONSTRATION.OBSERVED_BY, deed.by().value())
                .set(DEMONSTRATION.HAPPENED_AT, deed.at())
                .set(DEMONSTRATION.ENTERED_AT, deed.at())
                .set(DEMONSTRATION.NOTE_ID, deed.note().orElse(null))
                .execute();
    }

    /// Waits until nobody else signs or reverses for this student; held to the end of the
    /// transaction.
    void lockSignOffsOf(SubjectId student) {
        sql.execute(
                "select pg_advisory_xact_lock(hashtextextended(?, 0))",
                school + " sign-off " + student.value());
    }

    void insertSignOff(
            SignOff signOff, Deed deed, String module, String discipline, UUID authorisation) {
        sql.insertInto(SIGN_OFF)
                .set(SIGN_OFF.SCHOOL_ID, school)
                .set(SIGN_OFF.ID, signOff.id())
                .set(SIGN_OFF.SUBJECT_ID, deed.student().value())
                .set(SIGN_OFF.MODULE, module)
                .set(SIGN_OFF.DISCIPLINE, discipline)
                .set(SIGN_OFF.BASIS, signOff.basis())
                .set(SIGN_OFF.INSTRUCTOR_ID, deed.by().value())
                .set(SIGN_OFF.AUTHORISATION_ID, authorisation)
                .set(SIGN_OFF.HAPPENED_AT, deed.at())
                .set(SIGN_OFF.ENTERED_AT, deed.at())
                .execute();
    }

    void insertReversal(UUID signOff, Deed deed) {
        sql.insertInto(REVERSAL)
                .set(REVERSAL.SCHOOL_ID, school)
                .set(REVERSAL.SIGN_OFF_ID, signOff)
                .set(REVERSAL.SUBJECT_ID, deed.student().value())
                .set(REVERSAL.REVERSED_BY, deed.by().value())
                .set(REVERSAL.HAPPENED_AT, deed.at())
                .set(REVERSAL.ENTERED_AT, deed.at())
                .set(REVERSAL.NOTE_ID, deed.note().orElseThrow())
                .execute();
    }
}
