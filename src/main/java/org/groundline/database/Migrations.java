package org.groundline.database;

import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;

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

    /// Returns the newest migration that this program carries.
    static String newest(Address owner) {
        MigrationInfo[] all = flyway(owner, "groundline").info().all();
        return String.valueOf(all[all.length - 1].getVersion());
    }

    private static Flyway flyway(Address owner, String serverRole) {
        return Flyway.configure()
                .dataSource(owner.url(), owner.user(), owner.password())
                .placeholders(Map.of("server_role", serverRole))
                .locations("classpath:migrations")
                .load();
    }
}
