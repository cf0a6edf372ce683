package org.groundline.web.staff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.web.staff.StaffSchool.fields;
import static org.groundline.web.staff.StaffSchool.of;
import static org.groundline.web.staff.StaffSchool.text;

import org.groundline.database.SubjectId;
import org.groundline.record.SignOff;
import org.groundline.record.TalkItem;
import org.groundline.school.Actor;
import org.groundline.school.Role;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.UUID;

/// A student's record as staff see it, and what they enter there.
class RecordPagesTest {
    private static final TestServer SERVER = TestServer.start();
    private final StaffSchool staff = StaffSchool.open(SERVER);
    private final SubjectId ada = staff.givenStudent("ada");

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private Actor ina() {
        return SERVER.actor(staff.school(), "ina");
    }

    private TalkItem givenTalk() {
        staff.givenSitting("ada", staff.givenOpening("AER"), staff.oneTalk());
        return SERVER.doors()
                .records()
                .getRecord(ina(), ada)
                .getModule("AER")
                .toTalkThrough()
                .getFirst();
    }

    private List<SignOff> signOffs() {
        return SERVER.doors().records().getRecord(ina(), ada).getModule("AER").signOffs();
    }

    @Test
    void theRecordBeginsWithWhatIsMissing() {
        givenTalk();

        String page = text(staff.ina().get(of(ada)));

        String missing =
                page.substring(page.indexOf("Still missing"), page.indexOf("Requirements"));
        assertThat(missing)
                .contains("Equipment progress test not passed yet to be shown: Pre-flight check")
                .contains("Aerodynamics and flight mechanics 1 answer still to be talked through");
    }

    @Test
    void withEverythingMetOnlyTheSignatureIsMissing() {
        staff.givenSitting("ada", staff.givenOpening("AER"), staff::right);

        assertThat(text(staff.ina().get(of(ada))))
                .contains("Aerodynamics and flight mechanics only the signature");
    }

    @Test
    void aTalkWithoutAnOutcomeIsRefusedAndItsNoteIsHandedBack() {
        String item = givenTalk().item().toString();

        var refused =
                staff.ina()
                        .post(
                                of(ada) + "/debriefs",
                                fields(
                                        "item",
                                        item,
                                        "outcome",
                                        "",
                                        "note",
                                        "Drew it on the ground"));

        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("Not saved.", "Drew it on the ground</textarea>");
    }

    @Test
    void aTalkExplainedBackIsNoLongerMissing() {
        String item = givenTalk().item().toString();

        var entered =
                staff.ina()
                        .post(
                                of(ada) + "/debriefs",
                                fields("item", item, "outcome", "explained back", "note", ""));

        assertThat(entered.statusCode()).isEqualTo(302);
        assertThat(text(staff.ina().get(of(ada)))).doesNotContain("still to be talked through");
    }

    @Test
    void aDemonstrationIsOnlyRecordedWithTheTick() {
        var demonstration =
                TestServer.bank().course().findModule("EQU").orElseThrow().demonstrations();
        String id = demonstration.getFirst().id();

        var without = staff.ina().post(of(ada) + "/demonstrations", fields("demonstration", id));
        var with =
                staff.ina()
                        .post(
                                of(ada) + "/demonstrations",
                                fields("demonstration", id, "observed", "today"));

        assertThat(without.statusCode()).isEqualTo(400);
        assertThat(text(without)).contains("Tick that you observed the demonstration today");
        assertThat(with.statusCode()).isEqualTo(302);
        assertThat(text(staff.ina().get(of(ada)))).contains("1 May 2027, ina Person");
    }

    @Test
    void aWrongPasswordSignsNothing() {
        staff.givenSitting("ada", staff.givenOpening("AER"), staff::right);

        var refused =
                staff.ina()
                        .post(
                                of(ada) + "/sign-offs",
                                fields("module", "AER", "password", "not my password"));

        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).doesNotContain("not my password");
        assertThat(signOffs()).isEmpty();
    }

    @Test
    void aModuleWithATalkOpenCannotBeSigned() {
        givenTalk();

        var refused =
                staff.ina()
                        .post(
                                of(ada) + "/sign-offs",
                                fields("module", "AER", "password", TestServer.PASSWORD));

        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(signOffs()).isEmpty();
    }

    @Test
    void aReversalWithAWrongPasswordKeepsTheSignatureAndHandsTheReasonBack() {
        staff.givenSitting("ada", staff.givenOpening("AER"), staff::right);
        staff.givenSignOff(ada);
        UUID signOff = signOffs().getFirst().id();

        var refused =
                staff.ina()
                        .post(
                                of(ada) + "/sign-offs/" + signOff + "/reversal",
                                fields("reason", "Another Ada", "password", "no"));

        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("<details open>", "Another Ada</textarea>");
        assertThat(signOffs().getFirst().stands()).isTrue();
    }

    @Test
    void aStudentOfAnotherSchoolIsNotKnownHere() {
        var elsewhere = StaffSchool.open(SERVER);
        SubjectId bea = elsewhere.givenStudent("bea");

        assertThat(staff.ina().get(of(bea)).statusCode()).isEqualTo(404);
        assertThat(
                        staff.ina()
                                .post(
                                        of(bea) + "/sign-offs",
                                        fields("module", "AER", "password", TestServer.PASSWORD))
                                .statusCode())
                .isEqualTo(404);
    }

    @Test
    void aStudentDoesNotSeeTheRecordAsStaffDo() {
        assertThat(SERVER.logIn(staff.school(), "ada").get(of(ada)).statusCode()).isEqualTo(403);
    }

    @Test
    void anInstructorWhoLearnsHereIsOfferedNothingInTheirOwnRecord() {
        SubjectId ivo = SERVER.givenPerson(staff.school(), "ivo", Role.INSTRUCTOR, Role.STUDENT);

        String own = SERVER.logIn(staff.school(), "ivo").get(of(ivo)).body();

        assertThat(own).doesNotContain("Record the demonstration", "id=\"password-");
    }
}
