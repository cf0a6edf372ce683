package org.groundline.web.staff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.web.staff.StaffSchool.row;
import static org.groundline.web.staff.StaffSchool.text;

import org.groundline.school.Role;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// The pass rates as a picture and as a table.
class RatePagesTest {
    private static final TestServer SERVER = TestServer.start();
    private final StaffSchool staff = StaffSchool.open(SERVER);

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private void givenSittingWithoutTopicTwo(UUID opening, String student) {
        staff.givenStudent(student);
        staff.givenSitting(
                student,
                opening,
                item -> "AER-2".equals(item.topic()) ? Optional.empty() : staff.right(item));
    }

    @Test
    void fourStudentsAreTooFewToSayAnythingAndFiveStandAtTheirShareWithItsInterval() {
        UUID opening = staff.givenOpening("AER");
        List.of("ada", "bea", "cy", "dan").forEach(s -> givenSittingWithoutTopicTwo(opening, s));
        var four = staff.carl().get("/rates");
        givenSittingWithoutTopicTwo(opening, "eve");
        var five = staff.carl().get("/rates");

        assertThat(row(four, "Glide, speed and wind")).contains("too few students to say: 4");
        assertThat(four.body()).doesNotContain("class=\"dot\"");
        // Wilson's upper bound at 0 of 5: z²/(n + z²) = 3.8415/8.8415 = 43.4 %
        assertThat(row(five, "Glide, speed and wind"))
                .isEqualTo("Glide, speed and wind 0 of 5 students reached the mark 0 % 0 % – 43 %");
        assertThat(five.body()).contains("cx=\"0.00%\"").containsPattern("x1=\"0.00%\" x2=\"43.4");
        assertThat(text(five)).contains("the pass mark (75 % of the marks)");
    }

    @Test
    void theRatesOfAnIntakeCountItsStudentsAlone() {
        givenSittingWithoutTopicTwo(staff.givenOpening("AER"), "ada");
        var bea = SERVER.givenPerson(staff.school(), "bea", Role.STUDENT);
        UUID autumn = SERVER.givenIntake(staff.school(), "Autumn", bea).id();

        var all = staff.carl().get("/rates");
        var page = staff.carl().get("/rates?intake=" + autumn);

        assertThat(row(all, "Glide, speed and wind")).contains("too few students to say: 1");
        assertThat(row(page, "Glide, speed and wind")).contains("nobody has sat this yet");
        assertThat(text(page)).contains("Pass rates by topic Autumn");
    }
}
