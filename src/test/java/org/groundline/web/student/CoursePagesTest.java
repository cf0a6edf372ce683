package org.groundline.web.student;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.web.student.SmallTest.choosing;
import static org.groundline.web.student.SmallTest.form;

import org.groundline.database.SubjectId;
import org.groundline.school.Actor;
import org.groundline.school.Role;
import org.groundline.web.TestServer;
import org.groundline.web.TestServer.Browser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Map;

/// Where a student stands, in words.
class CoursePagesTest {
    private static final TestServer SERVER = startServer();

    private final SmallTest test = SmallTest.open(SERVER);
    private final Browser ada = test.ada();
    private final Actor ruth = SERVER.actor(test.school(), "ruth");
    private final SubjectId student = SERVER.actor(test.school(), "ada").subject();

    private static TestServer startServer() {
        try {
            return TestServer.startWith(SmallTest.bank(Files.createTempDirectory("bank")));
        } catch (IOException e) {
            throw new IllegalStateException("no folder for the small bank", e);
        }
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private String course() {
        return ada.get("/course").body().replaceAll("\\s+", " ");
    }

    /// Sits the test with only right answers.
    private void pass() {
        String sitting = test.begin(ada);
        int choosing = choosing(ada, sitting);
        PageForm choice = form(ada, sitting, choosing);
        ada.post(sitting + "/answers", choice.with("answer", choice.letterOf(SmallTest.RIGHT)));
        PageForm number = form(ada, sitting, 3 - choosing);
        String distance = String.valueOf(GlideQuestion.in(number.html()).distance());
        ada.post(sitting + "/answers", number.with("answer", distance));
        ada.post(sitting + "/hand-in", Map.of("sure", "yes"));
    }

    @Test
    void atFirstEverythingIsMissing() {
        assertThat(course())
                .contains("0 of 2 modules are signed off.")
                .contains("<span class=\"state untouched\">no test sat yet</span>")
                .contains("A test of this module, passed.")
                .contains("The check recited on the harness, to be shown to your instructor.")
                .contains("Every connection is touched and named.")
                .contains("No test was handed in yet.");
    }

    @Test
    void aDemonstrationThatWasSeenIsMet() {
        SERVER.doors().demonstrations().observe(ruth, student, "EQU-D1", "");

        assertThat(course())
                .contains("The check recited on the harness. Seen on 1 May 2027.")
                .doesNotContain("to be shown to your instructor");
    }

    @Test
    void aPassedTestMakesTheModuleReadyAndASignatureEndsIt() {
        pass();
        assertThat(course())
                .contains("<span class=\"state ready\">ready to be signed off")
                .contains("Test passed on 1 May 2027, with 2 of 2.")
                .contains("2 of 2, 100\u202F%");

        SERVER.doors().signOffs().signOff(ruth, student, "AER", TestServer.PASSWORD);

        assertThat(course())
                .contains("1 of 2 modules are signed off.")
                .contains("state signed\">signed off 1 May 2027 by ruth Person</span>");
    }

    @Test
    void anAnswerToTalkOverIsNamedWithItsQuestion() {
        String sitting = test.begin(ada);
        assertThat(course()).contains("the test is being sat");

        ada.post(sitting + "/hand-in", Map.of("sure", "yes"));

        assertThat(course())
                .contains("the last test was not passed, with 0 of 2")
                .contains("A safety-critical answer. Ask your instructor.")
                .contains("What does a steady headwind change about a straight glide?");
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"INSTRUCTOR", "CHIEF_INSTRUCTOR", "INSPECTOR"})
    void staffWhoSitNothingStillReadTheCourse(Role role) {
        SERVER.givenPerson(test.school(), "max", role);
        var page = SERVER.logIn(test.school(), "max").get("/course");

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body().contains("/practice/")).isEqualTo(role != Role.INSPECTOR);
        assertThat(page.body()).doesNotContain("/tests/");
    }
}
