package org.groundline.reading;

import static org.groundline.database.schema.Tables.BRIEF_ACKNOWLEDGEMENT;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/// The rows of acknowledgements; there is no way to change one.
final class ReadingRepository {
    private final DSLContext sql;
    private final UUID school;

    ReadingRepository(DSLContext sql, SchoolId school) {
        this.sql = sql;
        this.school = school.value();
    }

    /// That a version of a brief was read.
    record Acknowledgement(String topic, String version, Instant at) {}

    /// Adds one, unless there is one of this version already.
    void insertIfNew(SubjectId subject, Acknowledgement acknowledgement) {
        sql.insertInto(BRIEF_ACKNOWLEDGEMENT)
                .set(BRIEF_ACKNOWLEDGEMENT.SCHOOL_ID, school)
                .set(BRIEF_ACKNOWLEDGEMENT.SUBJECT_ID, subject.value())
                .set(BRIEF_ACKNOWLEDGEMENT.TOPIC, acknowledgement.topic())
                .set(BRIEF_ACKNOWLEDGEMENT.VERSION, acknowledgement.version())
                .set(BRIEF_ACKNOWLEDGEMENT.ACKNOWLEDGED_AT, acknowledgement.at())
                .onConflictDoNothing()
                .execute();
    }

    /// All of a person, the earliest first.
    List<Acknowledgement> listOf(SubjectId subject) {
        return sql.select(
                        BRIEF_ACKNOWLEDGEMENT.TOPIC,
                        BRIEF_ACKNOWLEDGEMENT.VERSION,
                        BRIEF_ACKNOWLEDGEMENT.ACKNOWLEDGED_AT)
                .from(BRIEF_ACKNOWLEDGEMENT)
                .where(
                        BRIEF_ACKNOWLEDGEMENT.SCHOOL_ID.eq(school),
                        BRIEF_ACKNOWLEDGEMENT.SUBJECT_ID.eq(subject.value()))
                .orderBy(BRIEF_ACKNOWLEDGEMENT.ACKNOWLEDGED_AT)
                .fetch(row -> new Acknowledgement(row.value1(), row.value2(), row.value3()));
    }
}
