package org.groundline.database;

import org.groundline.error.Refusal;
import org.jooq.DSLContext;

import java.util.ArrayList;
import java.util.List;

/// Checks of the role that the server logs in as and of the PostgreSQL behind it. Row-level
/// security protects nothing against a superuser or an owner, and an acknowledged answer is not
/// safe where commits are not flushed.
public final class ServerRole {
    private static final int OLDEST_MAJOR = 15;

    private ServerRole() {}

    /// Refuses a role that could see past row-level security, an old PostgreSQL, and a schema that
    /// is not this program's.
    public static void requireFit(Database database) {
        database.outsideSchools(
                sql -> {
                    requireOrdinary(sql);
                    requireMajor(sql);
                    return true;
                });
    }

    /// Returns the settings that are off and would lose committed answers in a crash; empty where
    /// all is well.
    public static List<String> undurable(Database database) {
        return database.outsideSchools(
                sql -> {
                    List<String> off = new ArrayList<>();
                    for (String name : List.of("fsync", "full_page_writes", "synchronous_commit")) {
                        if ("off".equals(sql.fetchValue("select current_setting(?)", name))) {
                            off.add(name);
                        }
                    }
                    return off;
                });
    }

    private static void requireOrdinary(DSLContext sql) {
        boolean mighty =
                exists(
                        sql,
                        "select 1 from pg_roles where rolname = current_user and (rolsuper or rolbypassrls)");
        boolean owner =
                exists(
                        sql,
                        "select 1 from pg_class c join pg_namespace n on n.oid = c.relnamespace where n.nspname ="
                                + " 'public' and c.relkind in ('r', 'p') and pg_has_role(current_user, c.relowner, 'member')");
        if (mighty || owner) {
            throw new Refusal.Conflict(
                    "The database user of the server must be an ordinary role: no superuser, no BYPASSRLS, no owner of"
                            + " the tables. Give it its own role in GROUNDLINE_DB_USER and keep the owner for `migrate`.");
        }
    }

    private static void requireMajor(DSLContext sql) {
        int version =
                ((Number) sql.fetchValue("select current_setting('server_version_num')::int"))
                        .intValue();
        if (version / 10_000 < OLDEST_MAJOR) {
            throw new Refusal.Conflict(
                    "PostgreSQL %d is too old; Groundline needs %d or newer."
                            .formatted(version / 10_000, OLDEST_MAJOR));
        }
    }

    private static boolean exists(DSLContext sql, String query) {
        return !sql.fetch(query).isEmpty();
    }
}
