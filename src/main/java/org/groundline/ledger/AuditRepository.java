package org.groundline.ledger;

import static org.groundline.database.schema.Tables.AUDIT_ENTRY;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/// The rows of the audit.
final class AuditRepository {
    private final DSLContext sql;

    AuditRepository(DSLContext sql) {
        this.sql = sql;
    }

    record Deed(
            Optional<SubjectId> actor,
            Optional<SubjectId> subject,
            String action,
            String object,
            String request) {}

    void insert(SchoolId school, UUID id, Instant at, Deed deed) {
        sql.insertInto(AUDIT_ENTRY)
                .set(AUDIT_ENTRY.SCHOOL_ID, school.value())
                .set(AUDIT_ENTRY.ID, id)
                .set(AUDIT_ENTRY.AT, at)
                .set(AUDIT_ENTRY.ACTOR_ID, deed.actor().map(SubjectId::value).orElse(null))
                .set(AUDIT_ENTRY.SUBJECT_ID, deed.subject().map(SubjectId::value).orElse(null))
                .set(AUDIT_ENTRY.ACTION, deed.action())
                .set(AUDIT_ENTRY.OBJECT, deed.object())
                .set(AUDIT_ENTRY.REQUEST_ID, deed.request().isEmpty() ? null : deed.request())
                .execute();
    }
}
