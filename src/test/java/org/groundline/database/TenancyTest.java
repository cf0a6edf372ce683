package org.groundline.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.error.Refusal;
import org.jooq.DSLContext;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.UUID;

/// What one school's transaction can see and touch of another's, asked of a filled database.
class TenancyTest {
    private final String name = TestDatabase.create();
    private final Database database = Database.open(TestDatabase.asServer(name));
    private final SchoolId here = school("here");
    private final SchoolId there = school("there");

    private SchoolId school(String code) {
        var id = new SchoolId(UUID.randomUUID());
        database.outsideSchools(
                sql ->
                        sql.execute(
                                "insert into school (id, code, name, zone, language, created_at) values (?, ?, ?, 'UTC',"
                                        + " 'en', now())",
                                id.value(),
                                code,
                                code));
        return id;
    }

    @AfterEach
    void close() {
        database.close();
    }

    private UUID subjectOf(SchoolId school) {
        UUID id = UUID.randomUUID();
        database.doInSchool(
                school,
                sql ->
                        sql.execute(
                                "insert into subject (school_id, id, created_at) values (?, ?, now())",
                                school.value(),
                                id));
        return id;
    }

    private int subjectsSeenBy(SchoolId school) {
        return database.inSchool(school, TenancyTest::subjects);
    }

    private static int subjects(DSLContext sql) {
        return sql.fetchCount(sql.selectFrom("subject"));
    }

    @Test
    void aSchoolSeesItsOwnRowsOnly() {
        subjectOf(here);
        subjectOf(here);
        subjectOf(there);

        assertThat(subjectsSeenBy(here)).isEqualTo(2);
        assertThat(subjectsSeenBy(there)).isEqualTo(1);
        int none = database.outsideSchools(TenancyTest::subjects);
        assertThat(none).isZero();
        int both = database.inSchools(List.of(here, there), TenancyTest::subjects);
        assertThat(both).isEqualTo(3);
    }

    @Test
    void aSchoolCannotWriteIntoAnother() {
        assertThatThrownBy(
                        () ->
                                database.doInSchool(
                                        here,
                                        sql ->
                                                sql.execute(
                                                        "insert into subject (school_id, id, created_at) values (?, ?, now())",
                                                        there.value(),
                                                        UUID.randomUUID())))
                .hasMessageContaining("row-level security");
    }

    @Test
    void aSchoolCannotChangeOrDeleteAnothersRows() {
        UUID subject = subjectOf(there);
        database.doInSchool(
                there,
                sql ->
                        sql.execute(
                                "insert into person (school_id, subject_id, given_name, family_name, email, email_normalised)"
                                        + " values (?, ?, 'A', 'B', 'a@b', 'a@b')",
                                there.value(),
                                subject));

        int changed =
                database.inSchool(here, sql -> sql.execute("update person set given_name = 'X'"));
        int deleted = database.inSchool(here, sql -> sql.execute("delete from person"));

        assertThat(changed + deleted).isZero();
        String given =
                database.inSchool(
                        there,
                        sql -> sql.fetchOne("select given_name from person").get(0, String.class));
        assertThat(given).isEqualTo("A");
    }

    @Test
    void theSchoolOfATransactionIsForgottenWithIt() {
        subjectOf(here);
        database.doInSchool(
                here, sql -> assertThat(sql.fetchCount(sql.selectFrom("subject"))).isOne());

        for (int i = 0; i < 40; i++) {
            int none = database.outsideSchools(TenancyTest::subjects);
            assertThat(none).isZero();
        }
    }

    @Test
    void aMigrationThatRunsOnAFilledDatabaseSeesItsRows() {
        subjectOf(here);
        subjectOf(there);

        try (var owner = Database.open(TestDatabase.asOwner(name))) {
            int all = owner.outsideSchools(TenancyTest::subjects);
            assertThat(all).isEqualTo(2);
        }
    }

    @Test
    void aRoleThatOwnsTheTablesIsRefusedAsTheServersOwn() {
        try (var owner = Database.open(TestDatabase.asOwner(name))) {
            assertThatThrownBy(() -> ServerRole.requireFit(owner))
                    .isInstanceOf(Refusal.Conflict.class)
                    .hasMessageContaining("must be an ordinary role");
        }
        ServerRole.requireFit(database);
    }

    @Test
    void aDatabaseBehindTheProgramIsRefused() {
        String empty = TestDatabase.createEmpty();

        assertThatThrownBy(() -> Migrations.requireApplied(TestDatabase.asServer(empty)))
                .isInstanceOf(Refusal.Conflict.class)
                .hasMessageContaining("lacks")
                .hasMessageContaining("groundline migrate");
        Migrations.requireApplied(TestDatabase.asServer(name));
    }
}
