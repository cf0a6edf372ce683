package org.groundline.database;

import static org.assertj.core.api.Assertions.assertThat;

import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Set;

/// Walks the catalogue: what it forbids cannot come in by a later migration unseen.
class CatalogueTest {
    /// The tables that belong to no school. Whoever adds one here says why in the migration.
    private static final Set<String> OUTSIDE =
            Set.of("school", "set_up_link", "flyway_schema_history");

    private static final String POLICY =
            "(school_id = ANY ((string_to_array(NULLIF(current_setting('groundline.schools'::text, true), ''::text),"
                    + " ','::text))::uuid[]))";

    private static final List<String> APPEND_ONLY =
            List.of(
                    "ledger_entry",
                    "answer",
                    "item",
                    "item_key",
                    "mark",
                    "scoring_run",
                    "sign_off",
                    "reversal",
                    "debrief",
                    "demonstration",
                    "brief_acknowledgement",
                    "policy",
                    "audit_entry",
                    "sitting_event",
                    "question_version");

    private final Address owner = TestDatabase.asOwner(TestDatabase.create());

    private <T> T catalogue(java.util.function.Function<DSLContext, T> question) {
        try (var connection = EmbeddedPostgres.connect(owner)) {
            return question.apply(DSL.using(connection, SQLDialect.POSTGRES));
        } catch (java.sql.SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private List<String> names(String query, Object... values) {
        return catalogue(sql -> sql.fetch(query, values).getValues(0, String.class));
    }

    private List<String> tenantTables() {
        return names(
                        "select relname from pg_class where relnamespace = 'public'::regnamespace and relkind in ('r', 'p')"
                                + " order by 1")
                .stream()
                .filter(name -> !OUTSIDE.contains(name))
                .toList();
    }

    @Test
    void thereAreTenantTables() {
        assertThat(tenantTables())
                .hasSizeGreaterThan(20)
                .contains("answer", "ledger_entry", "person");
    }

    @Test
    void everyPrimaryUniqueAndForeignKeyOfATenantTableLeadsWithTheSchool() {
        List<String> wrong =
                names(
                        """
                        select c.conrelid::regclass::text || '.' || c.conname
                        from pg_constraint c
                        join pg_attribute a on a.attrelid = c.conrelid and a.attnum = c.conkey[1]
                        where c.connamespace = 'public'::regnamespace and c.contype in ('p', 'u', 'f')
                          and c.conrelid::regclass::text <> all (?) and a.attname <> 'school_id'
                        """,
                        (Object) OUTSIDE.toArray(String[]::new));
        assertThat(wrong).isEmpty();
        assertThat(names("select conrelid::regclass::text from pg_constraint where contype = 'p'"))
                .containsAll(tenantTables());
    }

    @Test
    void everyForeignKeyBetweenTenantTablesPointsIntoTheSameSchool() {
        List<String> wrong =
                names(
                        """
                        select c.conrelid::regclass::text || '.' || c.conname
                        from pg_constraint c
                        join pg_attribute a on a.attrelid = c.confrelid and a.attnum = c.confkey[1]
                        where c.contype = 'f' and c.confrelid <> 'school'::regclass and a.attname <> 'school_id'
                        """);
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyUniqueIndexOfATenantTableLeadsWithTheSchool() {
        List<String> wrong =
                names(
                        """
                        select i.indexrelid::regclass::text
                        from pg_index i
                        join pg_class t on t.oid = i.indrelid and t.relnamespace = 'public'::regnamespace
                        join pg_attribute a on a.attrelid = i.indrelid and a.attnum = i.indkey[0]
                        where i.indisunique and t.relname <> all (?) and a.attname <> 'school_id'
                        """,
                        (Object) OUTSIDE.toArray(String[]::new));
        assertThat(wrong).isEmpty();
    }

    @Test
    void rowLevelSecurityIsForcedOnEveryTenantTable() {
        assertThat(
                        names(
                                "select relname from pg_class where relnamespace = 'public'::regnamespace and relrowsecurity"
                                        + " and relforcerowsecurity order by 1"))
                .isEqualTo(tenantTables());
    }

    @Test
    void everyTenantTableHasTheTwoPoliciesAndNoOther() {
        for (String table : tenantTables()) {
            assertThat(
                            names(
                                    "select policyname || ' ' || cmd || ' ' || qual || ' ' || with_check from pg_policies"
                                            + " where tablename = ? order by policyname",
                                    table))
                    .as(table)
                    .containsExactly(
                            "owner_sees_all ALL true true",
                            "rows_of_the_schools_set ALL " + POLICY + " " + POLICY);
            assertThat(
                            names(
                                    "select array_to_string(roles, ',') from pg_policies where tablename = ? and policyname ="
                                            + " 'owner_sees_all'",
                                    table))
                    .as(table)
                    .containsExactly(owner.user());
        }
    }

    @Test
    void nothingLooksPastRowLevelSecurity() {
        assertThat(
                        names(
                                """
                                select proname from pg_proc where pronamespace = 'public'::regnamespace and prosecdef
                                union all
                                select relname from pg_class where relnamespace = 'public'::regnamespace and relkind = 'm'
                                union all
                                select relname from pg_class where relnamespace = 'public'::regnamespace and relkind = 'v'
                                  and not coalesce('security_invoker=true' = any (reloptions), false)
                                """))
                .as(
                        "SECURITY DEFINER functions, materialised views, views without security_invoker")
                .isEmpty();
    }

    @Test
    void theServerMayNeitherChangeNorDeleteWhatIsAppendOnly() {
        for (String table : APPEND_ONLY) {
            assertThat(
                            names(
                                    "select privilege_type from information_schema.role_table_grants where table_name = ?"
                                            + " and grantee = ? order by 1",
                                    table,
                                    TestDatabase.serverUser()))
                    .as(table)
                    .containsExactly("INSERT", "SELECT");
        }
    }

    @Test
    void timesAreInstants() {
        assertThat(
                        names(
                                "select table_name || '.' || column_name from information_schema.columns where table_schema ="
                                        + " 'public' and data_type = 'timestamp without time zone' and table_name <>"
                                        + " 'flyway_schema_history'"))
                .isEmpty();
    }
}
