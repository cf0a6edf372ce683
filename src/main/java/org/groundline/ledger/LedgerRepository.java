package org.groundline.ledger;

import static org.groundline.database.schema.Tables.LEDGER_ENTRY;
import static org.groundline.database.schema.Tables.LEDGER_SALT;

import org.groundline.database.SchoolId;
import org.groundline.ledger.Ledger.Commitment;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.HexFormat;
import java.util.UUID;

/// The rows of the ledger; there is no way to change or delete one.
final class LedgerRepository {
    private final DSLContext sql;

    LedgerRepository(DSLContext sql) {
        this.sql = sql;
    }

    void insert(SchoolId school, UUID id, Entry entry, Instant entered, String body) {
        sql.insertInto(LEDGER_ENTRY)
                .set(LEDGER_ENTRY.SCHOOL_ID, school.value())
                .set(LEDGER_ENTRY.ID, id)
                .set(LEDGER_ENTRY.KIND, entry.kind().word())
                .set(LEDGER_ENTRY.HAPPENED_AT, entry.happenedAt())
                .set(LEDGER_ENTRY.ENTERED_AT, entered)
                .set(LEDGER_ENTRY.BODY, body)
                .execute();
    }

    void insertSalt(SchoolId school, UUID entry, String part, Commitment commitment) {
        sql.insertInto(LEDGER_SALT)
                .set(LEDGER_SALT.SCHOOL_ID, school.value())
                .set(LEDGER_SALT.ENTRY_ID, entry)
                .set(LEDGER_SALT.PART, part)
                .set(LEDGER_SALT.SUBJECT_ID, commitment.subject().value())
                .set(LEDGER_SALT.SALT, HexFormat.of().parseHex(commitment.salt()))
                .execute();
    }
}
