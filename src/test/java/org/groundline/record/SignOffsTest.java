package org.groundline.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.sitting.Openings.NewOpening;
import org.groundline.web.TestServer;
import org.jooq.DSLContext;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;

/// From a passed test to a name under it, and back.
class SignOffsTest {
    private static final TestServer SERVER = TestServer.start();
    private final School school =
            SERVER.givenSchool("s" + UUID.randomUUID().toString().substring(0, 8));
    private final SubjectId ada = SERVER.givenPerson(school, "ada", Role.STUDENT);
    private final Intake intake = SERVER.givenIntake(school, "Spring", ada);
    private Actor ina;

    @BeforeEach
    void givenInstructor() {
        SERVER.givenPerson(school, "ina", Role.INSTRUCTOR);
        ina = SERVER.actor(school, "ina");
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    /// Ada sits the equipment test and answers everything rightly but the first few safety-critical
    /// items.
    private void givenTest(int safetyCriticalWrong) {
        UUID opening =
                SERVER.doors()
                        .openings()
                        .open(ina, new NewOpening("EQU", intake.id(), Duration.ofHours(2), ""))
                        .id();
        var wrong = new AtomicInteger(safetyCriticalWrong);
        SERVER.givenSitting(
                school,
                "ada",
                opening,
                item ->
                        Optional.of(
                                item.safetyCritical() && wrong.getAndDecrement() > 0
                                        ? SERVER.wrongAnswer(school, item.id())
                                        : SERVER.rightAnswer(school, item.id())));
    }

    private ModuleRecord equipment() {
        return SERVER.doors().records().getRecord(ina, ada).getModule("EQU");
    }

    private void showEverything() {
        for (ShownDemonstration demonstration : equipment().toShow()) {
            SERVER.doors()
                    .demonstrations()
                    .observe(ina, ada, demonstration.demonstration().id(), "");
        }
    }

    private UUID signOff() {
        return SERVER.doors().signOffs().signOff(ina, ada, "EQU", TestServer.PASSWORD);
    }

    @Test
    void nothingIsSignedBeforeATestIsPassed() {
        assertThatThrownBy(this::signOff)
                .isInstanceOf(Refusal.Conflict.class)
                .hasMessageContaining("no test");
    }

    @Test
    void anOpenTalkOrAMissingDemonstrationKeepsTheSignOffClosed() {
        givenTest(2);
        assertThat(equipment().state()).isInstanceOf(ModuleState.Passed.class);
        assertThatThrownBy(this::signOff).hasMessageContaining("2 safety-critical answers");

        showEverything();
        for (TalkItem item : equipment().toTalkThrough()) {
            SERVER.doors()
                    .debriefs()
                    .enter(ina, ada, item.item(), Debriefs.Outcome.NOT_YET_UNDERSTOOD, "once more");
        }
        assertThatThrownBy(this::signOff).hasMessageContaining("2 safety-critical answers");
        assertThat(equipment().toTalkThrough()).allMatch(t -> t.talks() == 1);

        for (TalkItem item : equipment().toTalkThrough()) {
            SERVER.doors()
                    .debriefs()
                    .enter(ina, ada, item.item(), Debriefs.Outcome.EXPLAINED_BACK, "");
        }
        assertThat(equipment().state()).isEqualTo(new ModuleState.Ready());
        assertThat(signOff()).isNotNull();
    }

    @Test
    void aSignOffNeedsThePasswordAndAnAuthorisationOfToday() {
        givenTest(0);
        showEverything();
        assertThatThrownBy(
                        () -> SERVER.doors().signOffs().signOff(ina, ada, "EQU", "not my password"))
                .isInstanceOf(Refusal.Invalid.class);
        SERVER.givenPerson(school, "carl", Role.CHIEF_INSTRUCTOR);
        Actor unauthorised = SERVER.actor(school, "carl");
        assertThatThrownBy(
                        () ->
                                SERVER.doors()
                                        .signOffs()
                                        .signOff(unauthorised, ada, "EQU", TestServer.PASSWORD))
                .isInstanceOf(Refusal.Conflict.class)
                .hasMessageContaining("no authorisation");
        assertThat(equipment().state()).isEqualTo(new ModuleState.Ready());
    }

    @Test
    void twoWhoSignAtOnceMakeOneSignOff() throws Exception {
        givenTest(0);
        showEverything();
        try (var pool = java.util.concurrent.Executors.newFixedThreadPool(4)) {
            var calls =
                    java.util.Collections.nCopies(
                            4, (java.util.concurrent.Callable<Boolean>) this::signs);
            long signed = pool.invokeAll(calls).stream().filter(f -> f.resultNow()).count();
            assertThat(signed).isOne();
        }
        assertThat(equipment().signOffs()).hasSize(1);
    }

    private boolean signs() {
        try {
            signOff();
            return true;
        } catch (Refusal.Conflict e) {
            return false;
        }
    }

    @Test
    void aReversalNeedsAReasonAndLeavesBothEntries() {
        givenTest(0);
        showEverything();
        UUID id = signOff();
        var signOffs = SERVER.doors().signOffs();
        assertThatThrownBy(() -> signOffs.reverse(ina, ada, id, " ", TestServer.PASSWORD))
                .isInstanceOf(Refusal.Invalid.class)
                .hasMessageContaining("reason");

        signOffs.reverse(ina, ada, id, "Signed for the wrong student", TestServer.PASSWORD);

        SignOff reversed = equipment().signOffs().get(0);
        assertThat(signOffs.findReason(ina, reversed.reversal().orElseThrow()))
                .contains("Signed for the wrong student");
        assertThat(equipment().state()).isEqualTo(new ModuleState.Ready());
        assertThatThrownBy(() -> signOffs.reverse(ina, ada, id, "again", TestServer.PASSWORD))
                .isInstanceOf(Refusal.Conflict.class);
        assertThat(ledgerKinds()).contains("result", "demonstration", "sign-off", "reversal");
        assertThat(ledgerBodies()).doesNotContain("wrong student");
    }

    private String ledgerKinds() {
        return SERVER.database()
                .inSchool(
                        school.id(),
                        (DSLContext tx) ->
                                String.join(
                                        ",",
                                        tx.fetch("select distinct kind from ledger_entry")
                                                .getValues(0, String.class)));
    }

    private String ledgerBodies() {
        return SERVER.database()
                .inSchool(
                        school.id(),
                        (DSLContext tx) ->
                                String.join(
                                        ",",
                                        tx.fetch("select body from ledger_entry")
                                                .getValues(0, String.class)));
    }

    @Test
    void nobodyVouchesForThemselvesAndAStudentForNobody() {
        assertThatThrownBy(
                        () ->
                                SERVER.doors()
                                        .signOffs()
                                        .signOff(ina, ina.subject(), "EQU", TestServer.PASSWORD))
                .isInstanceOf(Refusal.Conflict.class);
        Actor student = SERVER.actor(school, "ada");
        assertThat(student.mayAtAll(Action.SIGN_OFF)).isFalse();
        assertThatThrownBy(
                        () ->
                                SERVER.doors()
                                        .signOffs()
                                        .signOff(student, ada, "EQU", TestServer.PASSWORD))
                .isInstanceOf(Refusal.Forbidden.class);
        assertThatThrownBy(
                        () ->
                                SERVER.doors()
                                        .debriefs()
                                        .enter(
                                                student,
                                                ada,
                                                UUID.randomUUID(),
                                                Debriefs.Outcome.EXPLAINED_BACK,
                                                ""))
                .isInstanceOf(Refusal.Forbidden.class);
    }
}
