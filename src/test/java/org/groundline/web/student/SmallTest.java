package org.groundline.web.student;

import org.groundline.bank.Questions;
import org.groundline.bank.SmallBank;
import org.groundline.database.SubjectId;
import org.groundline.school.Actor;
import org.groundline.school.PolicyRules;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.sitting.Opening;
import org.groundline.sitting.Openings.NewOpening;
import org.groundline.web.TestServer;
import org.groundline.web.TestServer.Browser;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.UUID;

/// A school with one student, Ada, and an opened test of the small bank's module AER: two items,
/// one to choose in and one number, in three minutes.
///
/// @param opened by an instructor of the school, Ruth
record SmallTest(TestServer server, School school, Opening opened) {
    static final String RIGHT = "The ground speed, which falls.";
    static final String WRONG = "Nothing that reaches the ground.";
    private static final String SECOND_QUESTION =
            """
            topic: AER-2
            questions:
              - id: headwind-and-ground-speed
                objective: AER-2.1
                level: recall
                safety-critical: true
                stem: What does a steady headwind change about a straight glide?
                options:
                  - text: The ground speed, which falls.
                    key: true
                  - text: Nothing that reaches the ground.
                    misconception: wind-ignored
                  - text: The ground speed, which rises.
                    misconception: wind-added
                rationale: Ground speed is airspeed less headwind, and the sink rate stays as it is.
                source: common practice
            """;

    /// The small bank with a second question in AER-2, so that a paper has one of either kind.
    static Questions bank(Path folder) {
        SmallBank bank = SmallBank.copiedTo(folder);
        bank.write("AER/AER-2-wind.yaml", SECOND_QUESTION);
        return Questions.load(bank.folder());
    }

    static SmallTest open(TestServer server) {
        School school = server.givenSchool("s" + TestServer.newId().toString().substring(0, 8));
        SubjectId ada = server.givenPerson(school, "ada", Role.STUDENT);
        server.givenPerson(school, "ruth", Role.INSTRUCTOR, Role.CHIEF_INSTRUCTOR);
        Actor ruth = server.actor(school, "ruth");
        server.doors().policies().change(ruth, 1, new PolicyRules(7_500, 10, 100, 5));
        UUID intake = server.givenIntake(school, "Spring", ada).id();
        Opening opened =
                server.doors()
                        .openings()
                        .open(ruth, new NewOpening("AER", intake, Duration.ofHours(2), "Hut"));
        return new SmallTest(server, school, opened);
    }

    Browser ada() {
        return server.logIn(school, "ada");
    }

    /// Begins the test and returns where the sitting is, `/sittings/…`.
    String begin(Browser ada) {
        return within(ada.post("/tests/" + opened.id() + "/begin", java.util.Map.of()));
    }

    /// Where an answer leads, without the school.
    String within(HttpResponse<String> answer) {
        String address = answer.headers().firstValue("Location").orElseThrow();
        return address.substring(school.code().length() + 1);
    }

    /// The form of an item of a sitting.
    static PageForm form(Browser ada, String sitting, int item) {
        return PageForm.in(ada.get(sitting + "?item=" + item).body());
    }

    /// The number of the item to choose in; the other one asks for a number.
    static int choosing(Browser ada, String sitting) {
        return form(ada, sitting, 1).html().contains("type=\"radio\"") ? 1 : 2;
    }

    static int typing(Browser ada, String sitting) {
        return 3 - choosing(ada, sitting);
    }
}
