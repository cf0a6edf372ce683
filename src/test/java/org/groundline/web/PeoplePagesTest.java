package org.groundline.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.school.Role;
import org.groundline.school.School;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.util.HashMap;
import java.util.Map;

/// Entering people on the page.
class PeoplePagesTest {
    private static final TestServer SERVER = TestServer.start();
    private final School school =
            SERVER.givenSchool("s" + TestServer.newId().toString().substring(0, 8));

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    @Test
    void anInstructorWhoseAuthorisationEndsBeforeItBeginsIsNotEntered() {
        SERVER.givenPerson(school, "carl", Role.CHIEF_INSTRUCTOR);
        Map<String, String> fields = new HashMap<>();
        fields.put("givenName", "Nora");
        fields.put("familyName", "Newcomer");
        fields.put("email", "nora@new.example");
        fields.put("password", TestServer.PASSWORD);
        fields.put("role", "instructor");
        fields.put("number", "N-1");
        fields.put("issuer", "Test office");
        fields.put("validUntil", "2020-01-01");
        var carl = SERVER.logIn(school, "carl");

        var refused = carl.post("/people", fields);
        fields.put("validUntil", "2030-01-01");
        var entered = carl.post("/people", fields);

        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body())
                .contains("does not end before it begins")
                .contains("value=\"nora@new.example\"");
        assertThat(entered.statusCode()).as("the address is still free").isEqualTo(302);
    }
}
