package org.groundline.web.staff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.web.staff.StaffSchool.row;
import static org.groundline.web.staff.StaffSchool.text;

import org.groundline.database.SubjectId;
import org.groundline.school.Role;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.time.Duration;
import java.util.Optional;
import java.util.UUID;

/// The class board.
class BoardPagesTest {
    private static final TestServer SERVER = TestServer.start();
    private final StaffSchool staff = StaffSchool.open(SERVER);

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    @Test
    void eachStateOfAModuleIsToldInWords() {
        UUID opening = staff.givenOpening("AER");
        staff.givenStudent("nora");
        staff.givenStudent("fay");
        staff.givenSitting("fay", opening, item -> Optional.empty());
        staff.givenStudent("sam");
        SERVER.doors().sittings().begin(SERVER.actor(staff.school(), "sam"), opening);
        staff.givenStudent("pat");
        staff.givenSitting("pat", opening, staff.oneTalk());
        staff.givenStudent("ray");
        staff.givenSitting("ray", opening, staff::right);
        SubjectId zoe = staff.givenStudent("zoe");
        staff.givenSitting("zoe", opening, staff::right);
        staff.givenSignOff(zoe);

        var board = staff.ina().get("/board");

        int modules = TestServer.bank().course().modules().size();
        assertThat(row(board, "nora Person"))
                .isEqualTo("nora Person" + " not begun".repeat(modules));
        assertThat(row(board, "fay Person")).contains(" not passed, 0 % ");
        assertThat(row(board, "sam Person")).contains(" sitting a test ");
        assertThat(row(board, "pat Person")).contains(" passed, 1 talk open ");
        assertThat(row(board, "ray Person")).contains(" ready ");
        assertThat(row(board, "zoe Person")).contains(" signed 1 May ");
        assertThat(text(board)).contains("All intakes, as of 1 May 2027, 10:00");
    }

    @Test
    void aSignatureOfAnotherYearCarriesItsYear() {
        try (var later = TestServer.start()) {
            var there = StaffSchool.open(later);
            SubjectId yan = there.givenStudent("yan");
            there.givenSitting("yan", there.givenOpening("AER"), there::right);
            there.givenSignOff(yan);
            later.passes(Duration.ofDays(300));

            assertThat(row(there.ina().get("/board"), "yan Person")).contains("signed 1 May 2027");
        }
    }

    @Test
    void theBoardOfAnIntakeHoldsItsStudentsAlone() {
        staff.givenStudent("ada");
        SubjectId bea = SERVER.givenPerson(staff.school(), "bea", Role.STUDENT);
        UUID autumn = SERVER.givenIntake(staff.school(), "Autumn", bea).id();

        var board = staff.ina().get("/board?intake=" + autumn);

        assertThat(text(board))
                .contains("bea Person", "Autumn, as of")
                .doesNotContain("ada Person");
    }

    @Test
    void aRowOpensToTheStudentsRecord() {
        SubjectId ada = staff.givenStudent("ada");

        assertThat(staff.ina().get("/board").body())
                .contains("/" + staff.school().code() + StaffSchool.of(ada) + "\"");
    }

    @Test
    void aBoardWithoutStudentsSaysWhatToDoFirst() {
        assertThat(text(staff.ina().get("/board")))
                .contains("No students yet.", "on the page People");
    }

    @Test
    void aNameThatLooksLikeMarkupIsOnlyWritten() {
        SERVER.givenPerson(staff.school(), "<b>bo", Role.STUDENT);

        assertThat(staff.ina().get("/board").body())
                .contains("&lt;b&gt;bo Person")
                .doesNotContain("<b>bo");
    }

    @Test
    void anIntakeThatIsNoIdIsRefused() {
        assertThat(staff.ina().get("/board?intake=all").statusCode()).isEqualTo(400);
    }
}
