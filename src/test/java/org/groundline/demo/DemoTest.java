package org.groundline.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.authoring.SchoolBanks;
import org.groundline.bank.Questions;
import org.groundline.chance.SeededDraw;
import org.groundline.database.Database;
import org.groundline.database.TestDatabase;
import org.groundline.error.Refusal;
import org.groundline.insight.PassRates;
import org.groundline.insight.TopicRate;
import org.groundline.ledger.Foundation;
import org.groundline.record.ModuleRecord;
import org.groundline.record.ModuleState;
import org.groundline.record.SignOff;
import org.groundline.record.StudentRecord;
import org.groundline.record.StudentRecords;
import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.school.Logins;
import org.groundline.school.People;
import org.groundline.school.School;
import org.groundline.school.Schools;
import org.groundline.sitting.AnswerWriter;
import org.groundline.sitting.Opening;
import org.groundline.sitting.Openings;
import org.groundline.sitting.Sittings;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/// The demo school, made once on a fresh database.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DemoTest {
    private static final Instant PRESENT = Instant.parse("2027-05-19T13:20:00Z");
    private static final long SEED = 20_270_501;
    private static final Questions BANK = Questions.load(Path.of("question-bank"));

    private final String name = TestDatabase.create();
    private final Database database = Database.open(TestDatabase.asServer(name));
    private final Foundation foundation = Foundation.on(database, InstantSource.fixed(PRESENT));
    private final AnswerWriter writer = AnswerWriter.start(database);
    private final DemoSchools demo =
            new DemoSchools(database, foundation.clock(), BANK, () -> analyse(name));

    @BeforeAll
    void make() {
        demo.make(SEED);
    }

    @AfterAll
    void close() {
        writer.close();
        database.close();
    }

    @Test
    void thereAreTwentyFourStudentsInTwoIntakes() {
        People people = new People(foundation);
        assertThat(people.listStudents(school(), Optional.empty())).hasSize(24);
        assertThat(people.listIntakes(school()))
                .extracting(Intake::name)
                .containsExactly("Swift", "Buzzard");
        assertThat(demo.exists()).isTrue();
    }

    @Test
    void aSchoolThatWasCutOffWhileItWasMadeIsNotTakenForWhole() {
        try (Database other = TestDatabase.open()) {
            var cutOff = new DemoSchools(other, foundation.clock(), BANK, () -> {});
            assertThat(cutOff.exists()).isFalse();
            new Schools(Foundation.on(other, foundation.clock())).create(Roster.shipped().school());
            assertThatThrownBy(cutOff::exists)
                    .isInstanceOf(Refusal.Conflict.class)
                    .hasMessageContaining("half made");
        }
    }

    @Test
    void everybodyWhoIsPrintedCanLogIn() {
        assertThat(demo.listLogIns())
                .hasSize(6)
                .allSatisfy(logIn -> assertThat(actor(logIn.email()).roles()).isNotEmpty());
    }

    @Test
    void severalModulesAreSignedOffAndOneSignOffIsReversedWithAReason() {
        List<SignOff> signOffs = modules().flatMap(m -> m.signOffs().stream()).toList();
        assertThat(signOffs.stream().filter(SignOff::stands)).hasSizeGreaterThan(10);
        assertThat(signOffs.stream().filter(s -> !s.stands())).hasSize(1);
        assertThat(rows("select n.text from reversal r join note n on n.id = r.note_id"))
                .hasSize(1)
                .allSatisfy(reason -> assertThat(reason).contains("wrong line"));
    }

    @Test
    void theBoardShowsEveryState() {
        assertThat(modules().<Class<?>>map(m -> m.state().getClass()).distinct())
                .containsExactlyInAnyOrder(
                        ModuleState.SignedOff.class,
                        ModuleState.Ready.class,
                        ModuleState.Sitting.class,
                        ModuleState.Passed.class,
                        ModuleState.NotPassed.class,
                        ModuleState.NotBegun.class);
    }

    @Test
    void someTalksAreOpenAndSomebodyHasNotPassedTwice() {
        assertThat(modules().flatMap(m -> m.toTalkThrough().stream())).isNotEmpty();
        assertThat(modules().filter(m -> m.state() instanceof ModuleState.NotPassed))
                .anySatisfy(m -> assertThat(m.attempts()).hasSize(2));
    }

    @Test
    void aTestIsOpenThatTheStudentOfTheYoungerIntakeCanBegin() {
        Actor student = actor(demo.listLogIns().getLast().email());
        Openings openings = new Openings(foundation, new SchoolBanks(foundation, BANK), () -> true);
        List<Opening> open =
                openings.listMine(student).stream().filter(o -> o.isOpenAt(PRESENT)).toList();
        assertThat(open).hasSize(1);
        var sittings =
                new Sittings(foundation, new SchoolBanks(foundation, BANK), writer, openings);
        assertThat(sittings.listOpen(student)).isEmpty();
    }

    @Test
    void oneStudentIsInTheMiddleOfASitting() {
        List<StudentRecord> board = board().stream().filter(DemoTest::isSitting).toList();
        assertThat(board).hasSize(1);
        Actor student = actor(board.getFirst().student().email());
        var openings = new Openings(foundation, new SchoolBanks(foundation, BANK), () -> true);
        var sittings =
                new Sittings(foundation, new SchoolBanks(foundation, BANK), writer, openings);
        var paper = sittings.open(student, sittings.listOpen(student).getFirst().facts().id());
        assertThat(paper.answers()).hasSizeBetween(5, 25);
    }

    private static boolean isSitting(StudentRecord record) {
        return record.modules().stream().anyMatch(ModuleRecord::sittingNow);
    }

    private static final Set<String> SAT_THERE = Set.of("EQU", "AER", "SAF");

    @Test
    void theRatesSpeakAndShowWhereTheOlderIntakeWasTaughtAWrongIdea() {
        var rates = new PassRates(foundation, BANK.course());
        Actor chief = actor(demo.listLogIns().getFirst().email());
        List<TopicRate> all =
                rates.byTopic(chief, Optional.empty()).topics().stream()
                        .filter(rate -> SAT_THERE.contains(rate.topic().id().substring(0, 3)))
                        .toList();
        assertThat(all).hasSize(9).noneMatch(TopicRate.Silent.class::isInstance);
        double glide = reached(all, "AER-2");
        assertThat(glide).isLessThan(0.5);
        assertThat(all.stream().map(DemoTest::reached)).allMatch(share -> share >= glide);
        assertThat(all.stream().filter(rate -> reached(rate) > 0.5)).hasSizeGreaterThan(5);
        assertThat(rows(WRONG_IDEAS).getFirst())
                .isIn(Roster.shipped().intakes().getFirst().sharedIdeas().getFirst().ideas());
    }

    private static final String WRONG_IDEAS =
            """
            select misconception from mark where topic = 'AER-2' and misconception is not null
            group by misconception order by count(*) desc
            """;

    @Test
    void theRatesOfTheYoungerIntakeAreSilentWhereNobodyHandedIn() {
        var rates = new PassRates(foundation, BANK.course());
        Actor chief = actor(demo.listLogIns().getFirst().email());
        Intake younger = new People(foundation).listIntakes(school()).getFirst();
        assertThat(rates.byTopic(chief, Optional.of(younger.id())).topics())
                .filteredOn(TopicRate.Silent.class::isInstance)
                .extracting(rate -> rate.topic().id())
                .contains("AER-1", "SAF-3")
                .doesNotContain("EQU-1");
    }

    private static double reached(List<TopicRate> all, String topic) {
        return all.stream()
                .filter(rate -> rate.topic().id().equals(topic))
                .mapToDouble(DemoTest::reached)
                .sum();
    }

    private static double reached(TopicRate rate) {
        var reached = (TopicRate.Reached) rate;
        return (double) reached.reached() / reached.students();
    }

    @Test
    void theSameSeedAndPresentGiveTheSameHistory() {
        String again = TestDatabase.create();
        try (Database other = Database.open(TestDatabase.asServer(again))) {
            new DemoSchools(other, foundation.clock(), BANK, () -> analyse(again)).make(SEED);
        }
        for (String history : List.of(ANSWERS, MARKS, RECORD)) {
            assertThat(rows(again, history)).isNotEmpty().isEqualTo(rows(history));
        }
    }

    private static final String ANSWERS =
            """
            select concat_ws(' | ', p.email, s.scope, s.stakes, i.position, i.question_id, i.seed,
                             a.sequence, a.raw, a.reading, a.received_at)
            from answer a join sitting s on s.id = a.sitting_id join item i on i.id = a.item_id
            join person p on p.subject_id = s.subject_id
            order by a.received_at, p.email, a.sequence
            """;
    private static final String MARKS =
            """
            select concat_ws(' | ', p.email, s.scope, s.started_at, s.handed_in_at, s.handed_in_by,
                             i.position, i.question_id, m.verdict, m.misconception, m.hundredths)
            from mark m join scoring_run r on r.id = m.run_id join sitting s on s.id = r.sitting_id
            join item i on i.id = m.item_id join person p on p.subject_id = m.subject_id
            order by s.started_at, p.email, i.position
            """;
    private static final String RECORD =
            """
            select concat_ws(' | ', p.email, e.what, e.at) from (
                select subject_id, outcome what, happened_at at from debrief
                union all select subject_id, demonstration, happened_at from demonstration
                union all select subject_id, module, happened_at from sign_off
                union all select subject_id, 'reversed', happened_at from reversal
            ) e join person p on p.subject_id = e.subject_id order by 1
            """;

    @Test
    void anotherSeedDrawsOtherPapers() {
        var one = new KnownSeeds(new SeededDraw(1));
        var other = new KnownSeeds(new SeededDraw(2));
        assertThat(one.getAsLong()).isNotEqualTo(other.getAsLong());
    }

    @Test
    void noTableButThoseOfPeopleAndNotesHoldsANameOfAStudent() {
        List<String> names =
                Roster.shipped().intakes().stream()
                        .flatMap(intake -> intake.students().stream())
                        .flatMap(s -> Stream.of(s.family(), s.email()))
                        .toList();
        List<String> tables =
                rows(
                        "select tablename from pg_tables where schemaname = 'public' and tablename not in"
                                + " ('person', 'note')");
        assertThat(tables).contains("ledger_entry", "audit_entry", "answer", "debrief");
        for (String table : tables) {
            String contents =
                    String.join("\n", rows("select to_jsonb(t)::text from " + table + " t"));
            assertThat(names).as(table).noneMatch(contents::contains);
        }
        assertThat(String.join("\n", rows("select to_jsonb(t)::text from person t")))
                .contains(names);
    }

    private School school() {
        return new Schools(foundation).getSchool("kestrel");
    }

    private Actor actor(String email) {
        var logins = new Logins(foundation);
        String password = Roster.shipped().password();
        return logins.findActor(school(), logins.logIn(school(), email, password)).orElseThrow();
    }

    private List<StudentRecord> board() {
        var openings = new Openings(foundation, new SchoolBanks(foundation, BANK), () -> true);
        var sittings =
                new Sittings(foundation, new SchoolBanks(foundation, BANK), writer, openings);
        Actor chief = actor(demo.listLogIns().getFirst().email());
        return new StudentRecords(foundation, BANK.course(), sittings)
                .listBoard(chief, Optional.empty());
    }

    private Stream<ModuleRecord> modules() {
        return board().stream().flatMap(r -> r.modules().stream());
    }

    private static void analyse(String database) {
        asOwner(database, sql -> sql.execute("analyze"));
    }

    private List<String> rows(String query) {
        return rows(name, query);
    }

    private static List<String> rows(String database, String query) {
        return asOwner(database, sql -> sql.fetch(query).map(row -> row.get(0, String.class)));
    }

    private static <T> T asOwner(String database, Function<DSLContext, T> work) {
        var owner = TestDatabase.asOwner(database);
        try (Connection connection =
                DriverManager.getConnection(owner.url(), owner.user(), owner.password())) {
            return work.apply(DSL.using(connection));
        } catch (java.sql.SQLException e) {
            throw new IllegalStateException(database, e);
        }
    }
}
