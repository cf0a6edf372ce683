package org.groundline.web.brief;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.Questions;
import org.groundline.bank.SmallBank;
import org.groundline.database.SubjectId;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.web.TestServer;
import org.groundline.web.TestServer.Browser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.net.http.HttpResponse;
import java.util.Map;

/// Reading the briefs of the small bank in a browser, and saying so.
class BriefPagesTest {
    private static final Questions BANK = Questions.load(SmallBank.SOUND);
    private static final TestServer SERVER = TestServer.startWith(BANK);
    private static final String VERSION = BANK.findBrief("AER-2").orElseThrow().version();

    private final School school =
            SERVER.givenSchool("s" + TestServer.newId().toString().substring(0, 8));
    private final SubjectId student = SERVER.givenPerson(school, "ada", Role.STUDENT);
    private final Browser ada = SERVER.logIn(school, "ada");

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private static String text(HttpResponse<String> page) {
        return page.body().replaceAll("\\s+", " ");
    }

    private HttpResponse<String> say(String version) {
        return ada.post("/briefs/AER-2", Map.of("version", version));
    }

    private Browser given(String name, Role role) {
        SERVER.givenPerson(school, name, role);
        return SERVER.logIn(school, name);
    }

    @Test
    void aBriefShowsItsTextItsPictureItsSourcesAndWhatItServes() {
        assertThat(text(ada.get("/briefs/AER-2")))
                .contains("<h1 id=\"title\">Glide, speed and wind</h1>")
                .contains("<h2>Glide is a triangle <span class=\"objectives\">")
                .contains("<figure class=\"diagram\"><svg")
                .contains(
                        "Sources: A Small Handbook, second edition (An Invented Press, 2024), p. 12; Common practice, no source.")
                .contains("<dt>AER-2.1</dt><dd>Estimate how far the wing glides in wind.</dd>")
                .contains("Version " + VERSION.substring(0, 8))
                .contains("manufacturer’s manual");
    }

    @Test
    void whoSaysThatTheyHaveReadItIsShownTheDay() {
        assertThat(text(ada.get("/briefs/AER-2")))
                .contains("not read yet")
                .contains("I have read this</button>");

        assertThat(say(VERSION).statusCode()).isBetween(302, 303);

        assertThat(text(ada.get("/briefs/AER-2")))
                .contains("<span class=\"state met\">read on ")
                .doesNotContain("I have read this</button>");
    }

    @Test
    void whoReadAnotherVersionIsShownTheOneThereIs() {
        HttpResponse<String> refused = say("0".repeat(64));

        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(text(refused))
                .contains("The brief has changed since you opened it.")
                .contains("name=\"version\" value=\"" + VERSION + "\"")
                .contains("not read yet");
    }

    @Test
    void theCourseAndPracticeLeadToTheBriefAndTellWhetherItWasRead() {
        String link = "href=\"/" + school.code() + "/briefs/AER-2\">Brief";
        assertThat(text(ada.get("/course"))).contains(link).contains("not read yet");
        assertThat(text(ada.get("/practice/AER-2"))).contains(link).contains("not read yet");

        say(VERSION);

        assertThat(text(ada.get("/course"))).contains("</a>, read on ");
        assertThat(text(ada.get("/practice/AER-2"))).contains(link).doesNotContain("not read yet");
    }

    @Test
    void practiceIsOpenToWhoHasReadNothing() {
        assertThat(ada.get("/practice/AER-2").statusCode()).isEqualTo(200);
    }

    @Test
    void staffSeeOnTheRecordWhichBriefsAreRead() {
        say(VERSION);
        Browser ina = given("ina", Role.INSTRUCTOR);

        assertThat(text(ina.get("/students/" + student.value())))
                .contains("Briefs: 1 of 1 read<span class=\"unseen\">: Aerodynamics</span>")
                .contains("Briefs: 0 of 1 read<span class=\"unseen\">: Equipment</span>");
    }

    @Test
    void theListLeadsToEveryBriefAndToTheSheetsOfEachModule() {
        assertThat(text(ada.get("/briefs")))
                .contains("/briefs/EQU-1\">Harness and connections</a>")
                .contains("/modules/AER/briefs\">");
    }

    @Test
    void theSheetsOfAModuleAreItsBriefsEachWithTheCaution() {
        assertThat(text(ada.get("/modules/EQU/briefs")))
                .contains("<h2 id=\"EQU-1\" class=\"title\">Harness and connections</h2>")
                .contains("<h3>What holds you ")
                .contains("<p class=\"caution printed\">Theory only.");
        assertThat(ada.get("/modules/XYZ/briefs").statusCode()).isEqualTo(404);
    }

    @Test
    void anInspectorReadsAndHasNothingToPress() {
        Browser ines = given("ines", Role.INSPECTOR);

        assertThat(text(ines.get("/briefs/AER-2")))
                .contains("Glide is a triangle")
                .doesNotContain("I have read this</button>")
                .doesNotContain("/practice/AER-2");
    }

    @Test
    void aTopicThatThereIsNotIsNotFound() {
        assertThat(ada.get("/briefs/XYZ-1").statusCode()).isEqualTo(404);
    }
}
