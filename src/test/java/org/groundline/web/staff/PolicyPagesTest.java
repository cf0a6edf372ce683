package org.groundline.web.staff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.web.staff.StaffSchool.fields;
import static org.groundline.web.staff.StaffSchool.text;

import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.net.http.HttpResponse;

/// The rules of the school.
class PolicyPagesTest {
    private static final TestServer SERVER = TestServer.start();
    private final StaffSchool staff = StaffSchool.open(SERVER);

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private HttpResponse<String> enter(String version, String passMark, String students) {
        return staff.carl()
                .post(
                        "/policy",
                        fields(
                                "version", version,
                                "passMark", passMark,
                                "topicItems", "10",
                                "numericShare", "15",
                                "studentsToSpeak", students));
    }

    @Test
    void aNewVersionHoldsFromNowOn() {
        assertThat(enter("1", "72,5", "8").statusCode()).isEqualTo(302);

        assertThat(text(staff.carl().get("/policy")))
                .contains("Version 2, in force since 1 May 2027", "72.5 %", "8 students");
    }

    @ParameterizedTest
    @CsvSource({
        "75x, 5, Write a percentage with at most two decimals, passMark",
        "NaN, 5, Write a percentage with at most two decimals, passMark",
        "100.01, 5, The pass mark lies between, passMark",
        "0, 5, The pass mark lies between, passMark",
        "75, 4, Below five students, studentsToSpeak",
        "75, 1e999, Write a whole number, studentsToSpeak"
    })
    void aRuleThatCannotBeIsRefusedAtItsField(
            String passMark, String students, String message, String field) {
        var refused = enter("1", passMark, students);

        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(text(refused)).contains("Not saved. " + message);
        assertThat(refused.body())
                .contains("aria-describedby=\"" + field + "-fault\"", "value=\"" + passMark + "\"");
        assertThat(text(staff.carl().get("/policy"))).contains("Version 1,");
    }

    @Test
    void aChangeToAVersionThatIsNoLongerInForceIsRefusedAndHandedBack() {
        enter("1", "80", "5");

        var late = enter("1", "60", "5");

        assertThat(late.statusCode()).isEqualTo(412);
        assertThat(late.body()).contains("value=\"60\"");
        assertThat(text(staff.carl().get("/policy"))).contains("Version 2,", "80 %");
    }

    @Test
    void anInstructorReadsThePolicyAndIsNotOfferedAChange() {
        assertThat(text(staff.ina().get("/policy"))).doesNotContain("Enter the next version");
    }
}
