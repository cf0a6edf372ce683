package org.groundline.database;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

/// The statistics that PostgreSQL plans its queries by.
///
/// Behind row-level security a table without statistics is taken for one that holds hardly any row
/// of the school: the planner then reads all of the school's rows again for each row it joins, and
/// what takes milliseconds takes seconds or does not end. PostgreSQL's own job gathers them, but
/// looks at a database once a minute only, and much can come in a minute: a restored copy, a list
/// of people. Renewing what was gathered once is left to that job.
public final class Statistics {
    /// Below this size (bytes) no plan is slow: eight pages.
    private static final int SMALL = 64 * 1024;

    private static final String MISSING =
            """
            select relname from pg_stat_user_tables
            where schemaname = 'public' and last_analyze is null and last_autoanalyze is null
              and pg_relation_size(relid) > ?
            order by relname
            """;

    private Statistics() {}

    /// Gathers the statistics of tables that hold more than a little and have none yet.
    ///
    /// @param owner of the tables; nobody else may
    /// @return the names of those tables
    public static List<String> gatherMissing(Database database, Address owner) {
        List<String> missing =
                database.outsideSchools(
                        sql -> sql.fetch(MISSING, SMALL).getValues(0, String.class));
        if (!missing.isEmpty()) {
            execute(owner, "analyze " + String.join(", ", missing));
        }
        return missing;
    }

    /// Renews the statistics of all tables.
    ///
    /// @param owner of the tables; nobody else may
    public static void renew(Address owner) {
        execute(owner, "analyze");
    }

    private static void execute(Address owner, String command) {
        try (Connection connection = EmbeddedPostgres.connect(owner);
                var statement = connection.createStatement()) {
            statement.execute(command);
        } catch (SQLException e) {
            throw new IllegalStateException("the statistics were not gathered", e);
        }
    }
}
