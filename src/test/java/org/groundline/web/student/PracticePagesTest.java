package org.groundline.web.student;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.Questions;
import org.groundline.bank.SmallBank;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.sitting.Practices.Progress;
import org.groundline.web.TestServer;
import org.groundline.web.TestServer.Browser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/// Practising on the small bank: topic EQU-1 has two questions to choose in, AER-2 one number.
class PracticePagesTest {
    private static final TestServer SERVER = TestServer.startWith(Questions.load(SmallBank.SOUND));
    private final School school =
            SERVER.givenSchool("s" + TestServer.newId().toString().substring(0, 8));
    private Browser ada = SERVER.stranger(school);

    @BeforeEach
    void logIn() {
        SERVER.givenPerson(school, "ada", Role.STUDENT);
        ada = SERVER.logIn(school, "ada");
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private static boolean asksForStraps(PageForm form) {
        return form.html().contains("leg straps?");
    }

    private static String right(PageForm form) {
        return form.letterOf(
                asksForStraps(form) ? "The pilot can slide out of the harness." : "1.2 m/s");
    }

    private static String wrong(PageForm form) {
        return form.letterOf(
                asksForStraps(form) ? "The seat is a little less comfortable." : "10 m/s");
    }

    private PageForm waiting(String topic) {
        HttpResponse<String> page = ada.get("/practice/" + topic);
        assertThat(page.statusCode()).isEqualTo(200);
        return PageForm.in(page.body());
    }

    private HttpResponse<String> send(String topic, Map<String, String> fields) {
        return ada.post("/practice/" + topic, fields);
    }

    private String explained(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(302);
        String address = answer.headers().firstValue("Location").orElseThrow();
        return ada.get(address.substring(address.indexOf("/practice"))).body();
    }

    private Progress progress(String topic) {
        return SERVER.doors()
                .practices()
                .progress(SERVER.actor(school, "ada"))
                .getOrDefault(topic, new Progress(0, 0));
    }

    @Test
    void aRightAnswerIsToldAtTheKeyAndExplained() {
        PageForm form = waiting("EQU-1");

        String page = explained(send("EQU-1", form.with("answer", right(form))));

        assertThat(page)
                .contains("class=\"key chosen\"")
                .contains("<p class=\"state right\">right</p>")
                .contains("<h2 id=\"why\">Why</h2>")
                .contains("Source: ")
                .doesNotContain("state wrong");
        assertThat(progress("EQU-1")).isEqualTo(new Progress(1, 1));
    }

    @Test
    void aWrongAnswerIsToldWithTheBeliefBehindIt() {
        PageForm form = waiting("EQU-1");

        String page = explained(send("EQU-1", form.with("answer", wrong(form))));

        assertThat(page)
                .contains("wrong: <span lang=\"en\">this takes the leg straps for a comfort")
                .contains("Leg straps keep the pilot in the harness.")
                .contains("<p class=\"state wrong\">wrong</p>")
                .containsOnlyOnce("<span class=\"state right\">right</span>");
        assertThat(progress("EQU-1")).isEqualTo(new Progress(1, 0));
    }

    @Test
    void aNumberWithACommaAndAnotherUnitIsReadAndTold() {
        PageForm form = waiting("AER-2");
        int metres = GlideQuestion.in(form.html()).distance();
        String typed =
                String.format(Locale.ROOT, "%.2f", metres / 1000.0).replace('.', ',') + " km";

        String page = explained(send("AER-2", form.with("answer", typed)));

        assertThat(page)
                .contains(typed.replace(',', '.').replace(" km", "\u202Fkm") + " = " + metres)
                .contains("<strong class=\"state right\">right</strong>")
                .contains("<ol class=\"steps\">")
                .containsPattern(metres + "\u202Fm = [0-9.]+\u202Fkm; anything from")
                .contains("counts as right");
    }

    @Test
    void theDrawingBesideTheStemAsksAndTheOneBesideTheSolutionTells() {
        PageForm form = waiting("AER-2");
        String answer = GlideQuestion.in(form.html()).distance() + "\u202Fm";

        String page = explained(send("AER-2", form.with("answer", "1")));

        assertThat(form.html())
                .containsOnlyOnce("<figure class=\"diagram\">")
                .contains("distance ?</text>")
                .doesNotContain(answer);
        assertThat(page)
                .containsOnlyOnce("<figure class=\"diagram\">")
                .contains("distance " + answer + "</text>");
    }

    @Test
    void aNumberThatAKnownMistakeGivesIsToldWithThatMistake() {
        PageForm form = waiting("AER-2");
        GlideQuestion question = GlideQuestion.in(form.html());

        String page =
                explained(send("AER-2", form.with("answer", question.stillAir().toPlainString())));

        assertThat(page)
                .contains("wrong: <span lang=\"en\">this leaves the wind out")
                .containsOnlyOnce(
                        "<strong class=\"state wrong\">here: this leaves the wind out</strong>")
                .containsPattern(
                        "Ground speed is airspeed minus headwind: [^<]+ <strong class=\"state wrong\">here: ")
                .contains(question.distance() + "\u202Fm; anything from");
    }

    @Test
    void anAnswerThatCouldBeTwoNumbersIsAskedBackBeforeItIsKept() {
        PageForm form = waiting("AER-2");

        HttpResponse<String> asked = send("AER-2", form.with("answer", "1.200"));

        assertThat(asked.statusCode()).isEqualTo(200);
        assertThat(asked.body())
                .contains("You typed 1.200: is that 1.2\u202Fm or 1200\u202Fm?")
                .contains("<button name=\"answer\" value=\"1.2000\u202Fm\">1.2\u202Fm</button>")
                .contains("<button name=\"answer\" value=\"1200\u202Fm\">1200\u202Fm</button>")
                .contains("Type it anew")
                .doesNotContain("<input id=\"answer\"");
        assertThat(progress("AER-2").answered()).isZero();

        String page = explained(send("AER-2", form.with("answer", "1200\u202Fm")));

        assertThat(page).contains("<dd>1200\u202Fm ");
        assertThat(progress("AER-2").answered()).isEqualTo(1);
    }

    @Test
    void theSameFormSentTwiceIsOneAnswer() {
        PageForm form = waiting("AER-2");
        Map<String, String> fields = form.with("answer", "100");

        String once = explained(send("AER-2", fields));
        String twice = explained(send("AER-2", fields));

        assertThat(twice).isEqualTo(once);
        assertThat(progress("AER-2").answered()).isEqualTo(1);
    }

    @Test
    void aSecondAnswerFromAnotherTabIsShownTheFirst() {
        PageForm oneTab = waiting("AER-2");
        PageForm otherTab = waiting("AER-2");
        int right = GlideQuestion.in(oneTab.html()).distance();
        send("AER-2", oneTab.with("answer", "100"));

        String page = explained(send("AER-2", otherTab.with("answer", String.valueOf(right))));

        assertThat(page).contains("<dd>100\u202Fm <strong class=\"state wrong\">wrong");
        assertThat(progress("AER-2")).isEqualTo(new Progress(1, 0));
    }

    static Stream<String> unreadable() {
        return Stream.of(
                "", "   ", "NaN", "1e999", "Infinity", "far away", "5 kg", "9".repeat(10_240));
    }

    @ParameterizedTest
    @MethodSource("unreadable")
    void whatCannotBeReadComesBackAsTypedWithItsReason(String typed) {
        PageForm form = waiting("AER-2");

        HttpResponse<String> answer = send("AER-2", form.with("answer", typed));

        assertThat(answer.statusCode()).isEqualTo(400);
        PageForm again = PageForm.in(answer.body());
        assertThat(again.find("name=\"answer\"[^>]* value=\"([^\"]*)\"")).isEqualTo(typed);
        assertThat(again.find("<p class=\"error\" id=\"refused\" role=\"alert\">([^<]+)</p>"))
                .isNotBlank();
        assertThat(again.hidden().get("item")).isEqualTo(form.hidden().get("item"));
        assertThat(again.hidden().get("clientId")).isNotEqualTo(form.hidden().get("clientId"));
        assertThat(progress("AER-2").answered()).isZero();
    }

    @Test
    void markupThatSomebodyTypesStaysText() {
        PageForm form = waiting("AER-2");

        String page = send("AER-2", form.with("answer", "\"><script>x</script>")).body();

        assertThat(page).doesNotContain("<script>x").contains("&lt;script>x");
    }

    @Test
    void nothingIsExplainedBeforeTheAnswer() {
        for (String topic : List.of("EQU-1", "AER-2")) {
            PageForm form = waiting(topic);
            var early =
                    ada.get(
                            "/practice/%s/%s/%s"
                                    .formatted(
                                            topic,
                                            form.hidden().get("sitting"),
                                            form.hidden().get("item")));

            assertThat(early.statusCode()).isEqualTo(409);
            assertThat(form.html() + early.body())
                    .doesNotContain("Only the leg straps", "The lowest sink rate is the smallest")
                    .doesNotContain("In still air you would get", "Ground speed is airspeed")
                    .doesNotContain(
                            "this takes",
                            "this trusts",
                            "this leaves",
                            "this adds",
                            "small-handbook",
                            "Common practice")
                    .doesNotContain("<li class=\"key", "state right");
        }
    }

    @Test
    void anothersPracticeIsNotThere() {
        PageForm form = waiting("AER-2");
        send("AER-2", form.with("answer", "100"));
        SERVER.givenPerson(school, "bob", Role.STUDENT);
        Browser bob = SERVER.logIn(school, "bob");
        String address =
                "/practice/AER-2/%s/%s"
                        .formatted(form.hidden().get("sitting"), form.hidden().get("item"));

        assertThat(ada.get(address).statusCode()).isEqualTo(200);
        assertThat(bob.get(address).statusCode()).isEqualTo(404);
        Map<String, String> stolen = form.with("answer", "200", "csrf", bob.formToken());
        assertThat(bob.post("/practice/AER-2", stolen).statusCode()).isEqualTo(404);
    }

    @Test
    void aTopicThatTheCourseLacksIsNotThere() {
        assertThat(ada.get("/practice/AER-9").statusCode()).isEqualTo(404);
        assertThat(send("AER-9", waiting("AER-2").with("answer", "1")).statusCode()).isEqualTo(404);
    }

    @Test
    void theCoursePageCountsWhatWasPractised() {
        send("AER-2", waiting("AER-2").with("answer", "100"));

        assertThat(ada.get("/course").body().replaceAll("\\s+", " "))
                .containsPattern(
                        "/practice/AER-2\">Glide, speed and wind</a> "
                                + "<br><small .*?/briefs/AER-2\".*?</small> </th>"
                                + " <td class=\"number\">1</td> <td class=\"number\">0</td>");
    }
}
