package org.groundline.web.staff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.web.staff.StaffSchool.fields;
import static org.groundline.web.staff.StaffSchool.row;
import static org.groundline.web.staff.StaffSchool.text;

import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.time.Duration;

/// Opening tests for an intake.
class TestPagesTest {
    private static final TestServer SERVER = TestServer.start();
    private final StaffSchool staff = StaffSchool.open(SERVER);

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    @Test
    void anOpenedTestStandsInTheTableUntilItIsClosed() {
        var opened =
                staff.ina()
                        .post(
                                "/tests",
                                fields(
                                        "module", "AER",
                                        "intake", staff.intake().id().toString(),
                                        "hours", "3",
                                        "place", "The meadow"));

        assertThat(opened.statusCode()).isEqualTo(302);
        assertThat(row(staff.ina().get("/tests"), "Progress test: Aerodynamics"))
                .contains("open now Spring")
                .contains("The meadow ina Person");
    }

    @Test
    void aTestThatCanNoLongerBeBegunIsClosed() {
        staff.givenOpening("EQU");
        SERVER.passes(Duration.ofHours(3));

        assertThat(row(staff.ina().get("/tests"), "Progress test: Equipment")).contains(" closed ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0", "-1", "337", "1e3", "NaN", "three"})
    void hoursThatAreNoneAreRefusedAtTheirFieldAndNothingTypedIsLost(String hours) {
        var refused =
                staff.ina()
                        .post(
                                "/tests",
                                fields(
                                        "module",
                                        "SAF",
                                        "intake",
                                        staff.intake().id().toString(),
                                        "hours",
                                        hours,
                                        "place",
                                        "The meadow"));

        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(text(refused)).contains("Not saved. Write a whole number from 1 to 336.");
        assertThat(refused.body())
                .contains("aria-describedby=\"hours-fault\"", "value=\"The meadow\"")
                .containsPattern("value=\"SAF\" selected");
        assertThat(text(staff.ina().get("/tests"))).contains("No test was opened yet");
    }

    @Test
    void anIntakeOfAnotherSchoolIsNotKnownHere() {
        var elsewhere = StaffSchool.open(SERVER);

        var refused =
                staff.ina()
                        .post(
                                "/tests",
                                fields(
                                        "module", "AER",
                                        "intake", elsewhere.intake().id().toString(),
                                        "hours", "3",
                                        "place", ""));

        assertThat(refused.statusCode()).isBetween(400, 404);
        assertThat(text(staff.ina().get("/tests"))).contains("No test was opened yet");
    }
}
