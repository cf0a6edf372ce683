package org.groundline.database;

import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.groundline.error.Refusal;

import java.util.Map;

/// Brings a database's schema to the state that this program was built for.
public final class Migrations {
    private Migrations() {}

    /// Applies what is missing.
    ///
    /// @param owner who owns the tables
    /// @param serverRole the role that the server logs in as; gets the rights it needs and no more
    /// @return how many were applied
    public static int apply(Address owner, String serverRole) {
        return flyway(owner, serverRole).migrate().migrationsExecuted;
    }

    /// Refuses a database that the migrations of this program have not reached. Needs to read only.
    public static void requireApplied(Address server) {
        MigrationInfo[] pending = flyway(server, server.user()).info().pending();
        if (pending.length > 0) {
            throw new Refusal.Conflict(
                    "The database lacks %d migrations, the first being %s. Run `groundline migrate` with the owner's log-in first."
                            .formatted(pending.length, pending[0].getVersion()));
        }
    }

    private static Flyway flyway(Address owner, String serverRole) {
        return Flyway.configure()
                .dataSource(owner.url(), owner.user(), owner.password())
                .placeholders(Map.of("server_role", serverRole))
                .locations("classpath:migrations")
                .load();
    }
}
