package org.groundline.web.staff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.web.staff.StaffSchool.fields;
import static org.groundline.web.staff.StaffSchool.text;

import org.groundline.school.Role;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.Map;

/// Entering people on the page.
class PeoplePagesTest {
    private static final TestServer SERVER = TestServer.start();
    private final StaffSchool staff = StaffSchool.open(SERVER);

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private static Map<String, String> nora() {
        return fields(
                "givenName", "Nora",
                "familyName", "Newcomer",
                "email", "nora@new.example",
                "password", TestServer.PASSWORD,
                "role", "instructor",
                "number", "N-1",
                "issuer", "Test office",
                "validUntil", "2030-01-01");
    }

    private Map<String, String> noraWith(String field, String value) {
        Map<String, String> fields = nora();
        fields.put(field, value);
        return fields;
    }

    @Test
    void anInstructorWhoseAuthorisationEndsBeforeItBeginsIsNotEntered() {
        var refused = staff.carl().post("/people", noraWith("validUntil", "2020-01-01"));
        var entered = staff.carl().post("/people", nora());

        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body())
                .contains("does not end before it begins")
                .contains("value=\"nora@new.example\"");
        assertThat(entered.statusCode()).as("the address is still free").isEqualTo(302);
    }

    @ParameterizedTest
    @CsvSource({"givenName, ' '", "email, nobody", "password, too short", "validUntil, someday"})
    void theFieldAtFaultIsMarkedAndThePasswordIsNotHandedBack(String field, String value) {
        var refused = staff.carl().post("/people", noraWith(field, value));

        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body())
                .contains("id=\"" + field + "-fault\"", "value=\"Newcomer\"")
                .doesNotContain(TestServer.PASSWORD)
                .doesNotContain("too short\"");
    }

    @Test
    void severalStudentsJoinAnIntakeAtOnce() {
        var ada = SERVER.givenPerson(staff.school(), "ada", Role.STUDENT);
        var bea = SERVER.givenPerson(staff.school(), "bea", Role.STUDENT);

        var joined = join(ada.value().toString(), bea.value().toString());

        assertThat(joined.statusCode()).isEqualTo(302);
        assertThat(text(staff.carl().get("/people"))).contains("2 students ada Person bea Person");
    }

    @Test
    void nobodyJoinsWhereOneIsOfAnotherSchool() {
        var ada = SERVER.givenPerson(staff.school(), "ada", Role.STUDENT);
        var eve = StaffSchool.open(SERVER).givenStudent("eve");

        var refused = join(ada.value().toString(), eve.value().toString());

        assertThat(refused.statusCode()).isEqualTo(404);
        assertThat(text(staff.carl().get("/people"))).contains("0 students");
    }

    @Test
    void anEmptyChoiceIsRefused() {
        assertThat(text(join())).contains("Not saved. Tick at least one student.");
    }

    private HttpResponse<String> join(String... students) {
        var carl = staff.carl();
        String ticked =
                java.util.Arrays.stream(students)
                        .map(student -> "&student=" + student)
                        .collect(java.util.stream.Collectors.joining());
        String address =
                "/" + staff.school().code() + "/intakes/" + staff.intake().id() + "/members";
        return carl.send(
                carl.request(address)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString("csrf=" + carl.formToken() + ticked))
                        .build());
    }

    @Test
    void aSecondIntakeOfTheSameNameIsRefusedAndHandedBack() {
        var refused =
                staff.carl().post("/intakes", fields("name", "Spring", "startsOn", "2027-06-01"));

        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.body()).contains("value=\"Spring\"", "value=\"2027-06-01\"");
    }

    @Test
    void thePeopleAreForTheChiefInstructor() {
        assertThat(staff.ina().get("/people").statusCode()).isEqualTo(403);
    }
}
