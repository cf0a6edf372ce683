package org.groundline.database;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import java.util.UUID;
import java.util.regex.Pattern;

class StatisticsTest {
    private static final int MANY = 5_000;

    private final String name = TestDatabase.create();
    private final Address owner = TestDatabase.asOwner(name);
    private final Database database = Database.open(TestDatabase.asServer(name));
    private final SchoolId school = new SchoolId(UUID.randomUUID());

    @AfterEach
    void close() {
        database.close();
    }

    /// Fills two tables, which PostgreSQL's own job leaves alone.
    private void givenRows() {
        for (String table : new String[] {"school", "subject"}) {
            execute("alter table " + table + " set (autovacuum_enabled = false)");
        }
        execute(
                "insert into school values ('%s', 'here', 'Here', 'Europe/Vienna', 'en', now())"
                        .formatted(school.value()));
        execute(
                "insert into subject select '%s', gen_random_uuid(), now() from generate_series(1, %d)"
                        .formatted(school.value(), MANY));
    }

    private void execute(String statement) {
        TestDatabase.execute(owner, statement);
    }

    /// How many rows of the school the planner counts on.
    private int expectedRows() {
        String plan =
                database.inSchool(
                        school,
                        tx ->
                                tx.fetch(
                                                "explain select * from subject where school_id = ?",
                                                school.value())
                                        .formatCSV());
        var rows = Pattern.compile("rows=(\\d+)").matcher(plan);
        assertThat(rows.find()).as(plan).isTrue();
        return Integer.parseInt(rows.group(1));
    }

    @Test
    void aLargeTableWithoutStatisticsGetsThemOnce() {
        givenRows();

        assertThat(Statistics.gatherMissing(database, owner)).containsExactly("subject");
        assertThat(Statistics.gatherMissing(database, owner)).isEmpty();
    }

    @Test
    void withThemThePlannerKnowsHowMuchASchoolHas() {
        givenRows();
        int before = expectedRows();
        Statistics.gatherMissing(database, owner);

        assertThat(before).isLessThan(MANY / 100);
        assertThat(expectedRows()).isBetween(MANY / 2, MANY * 2);
    }

    @Test
    void renewingThemLeavesNoneMissing() {
        givenRows();
        Statistics.renew(owner);

        assertThat(Statistics.gatherMissing(database, owner)).isEmpty();
        assertThat(expectedRows()).isBetween(MANY / 2, MANY * 2);
    }
}
