package org.groundline.ledger;

import org.groundline.database.Database;
import org.groundline.database.Ids;

import java.time.Instant;
import java.time.InstantSource;

/// What every floor above stands on: the database, the clock, ids, the ledger and the audit.
public record Foundation(
        Database database, InstantSource clock, Ids ids, Ledger ledger, Audit audit) {
    /// Lays the foundation on a database and a clock.
    public static Foundation on(Database database, InstantSource clock) {
        var ids = new Ids(clock);
        return new Foundation(database, clock, ids, new Ledger(ids, clock), new Audit(ids, clock));
    }

    /// The present instant.
    public Instant now() {
        return clock.instant();
    }
}
