package org.groundline.web.student;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.web.student.SmallTest.choosing;
import static org.groundline.web.student.SmallTest.form;
import static org.groundline.web.student.SmallTest.typing;

import org.groundline.database.SubjectId;
import org.groundline.record.Debriefs;
import org.groundline.school.Actor;
import org.groundline.school.Role;
import org.groundline.sitting.OpenSitting;
import org.groundline.web.TestServer;
import org.groundline.web.TestServer.Browser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;

/// Sitting a test from its rules to its result.
class SittingPagesTest {
    private static final TestServer SERVER = startServer();

    private final SmallTest test = SmallTest.open(SERVER);
    private final Browser ada = test.ada();

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

    private HttpResponse<String> send(Browser browser, String sitting, Map<String, String> fields) {
        return browser.post(sitting + "/answers", fields);
    }

    private OpenSitting seenBy(String sitting) {
        UUID id = UUID.fromString(sitting.substring("/sittings/".length()));
        return SERVER.doors().sittings().open(SERVER.actor(test.school(), "ada"), id);
    }

    /// The school's clock some time from now.
    private String time(Duration fromNow) {
        return DateTimeFormatter.ofPattern("HH:mm")
                .format(SERVER.now().plus(fromNow).atZone(test.school().zone()));
    }

    @Test
    void theRulesAreToldBeforeTheTestBegins() {
        String course = ada.get("/course").body();
        String rules = ada.get("/tests/" + test.opened().id()).body();

        assertThat(course).contains("/tests/" + test.opened().id()).contains("until 1 May 2027");
        assertThat(rules)
                .contains("<dt>Questions</dt><dd>2</dd>")
                .contains("<dd>3 minutes, counted from the moment you begin</dd>")
                .contains("<dd>75\u202F% of the marks")
                .contains("<dt>Place</dt><dd>Hut</dd>")
                .contains("<dt>Aids</dt>")
                .contains("Every answer is saved at once.")
                .contains("not shown before you hand in")
                .contains("the test hands itself in")
                .contains("no permission to fly");
        assertThat(ada.get("/sittings/" + TestServer.newId()).statusCode()).isEqualTo(404);
    }

    @Test
    void aTestGoesFromItsBeginOverAnotherDeviceToItsResultByTopic() {
        String sitting = test.begin(ada);
        int first = choosing(ada, sitting);
        PageForm choice = form(ada, sitting, first);
        var saved =
                send(
                        ada,
                        sitting,
                        choice.with("answer", choice.letterOf(SmallTest.RIGHT), "go", "stay"));
        assertThat(saved.statusCode()).isEqualTo(302);
        assertThat(form(ada, sitting, first).html())
                .contains("saved " + time(Duration.ZERO))
                .containsPattern("value=\"[A-C]\" checked");

        Browser phone = test.ada();
        assertThat(phone.get("/course").body()).contains("Go on with the test");
        PageForm onPhone = form(phone, sitting, first);
        assertThat(onPhone.html()).containsPattern("value=\"[A-C]\" checked");
        assertThat(onPhone.hidden()).containsEntry("seat", "2");
        String review = phone.get(sitting + "/review").body();
        assertThat(review)
                .contains("One of 2 questions is still open.")
                .contains("Back to question " + (3 - first));

        PageForm number = form(phone, sitting, 3 - first);
        send(phone, sitting, number.with("answer", "100", "flag", "yes"));
        assertThat(phone.get(sitting + "/review").body())
                .contains("All 2 questions are answered.")
                .contains("flagged");
        SERVER.passes(Duration.ofMinutes(2));
        var handedIn = phone.post(sitting + "/hand-in", Map.of("sure", "yes"));

        assertThat(test.within(handedIn)).isEqualTo(sitting + "/result");
        assertThat(phone.get(sitting + "/result").body().replaceAll("\\s+", " "))
                .contains("1 of 2, 50\u202F%. The pass mark is 75\u202F%:")
                .contains("<span class=\"state missing\">not passed</span>")
                .contains("Glide, speed and wind</th><td class=\"number\">1</td>")
                .contains("after 2 minutes")
                .contains("Ground speed is airspeed less headwind")
                .contains("Policy version 2");
        assertThat(ada.get("/course").body()).contains("the last test was not passed, with 1 of 2");
    }

    @Test
    void theTimeThatIsOverHandsInWhatWasSaved() {
        String sitting = test.begin(ada);
        int first = choosing(ada, sitting);
        PageForm choice = form(ada, sitting, first);
        send(ada, sitting, choice.with("answer", choice.letterOf(SmallTest.RIGHT)));
        PageForm late = form(ada, sitting, 3 - first);

        SERVER.passes(Duration.ofMinutes(3).plusSeconds(1));
        var answer = send(ada, sitting, late.with("answer", "100", "go", "next"));

        assertThat(test.within(answer)).isEqualTo(sitting + "/result");
        assertThat(test.within(ada.get(sitting))).isEqualTo(sitting + "/result");
        assertThat(ada.get(sitting + "/result").body())
                .contains("when the time was over")
                .contains("1 of 2")
                .contains("No answer was given.");
    }

    @Test
    void theClockShowsMinutesAndInTheLastTwoMinutesSeconds() {
        String sitting = test.begin(ada);
        String end = time(Duration.ofMinutes(3));
        assertThat(ada.get(sitting).body())
                .contains("<strong>3</strong> <span>minutes left</span>, until " + end)
                .contains("data-seconds=\"180\"");

        SERVER.passes(Duration.ofSeconds(81));
        assertThat(ada.get(sitting).body())
                .contains("<strong>1:39</strong> <span>left</span>")
                .contains("data-seconds=\"99\"");
    }

    static Stream<String> unreadable() {
        return Stream.of("NaN", "1e999", "Infinity", "-", "5 kg", "1" + "0".repeat(10_239));
    }

    @ParameterizedTest
    @MethodSource("unreadable")
    void whatCannotBeReadComesBackAsTypedAndNothingSavedIsLost(String typed) {
        String sitting = test.begin(ada);
        int item = typing(ada, sitting);
        send(ada, sitting, form(ada, sitting, item).with("answer", "1234"));

        PageForm before = form(ada, sitting, item);
        var answer = send(ada, sitting, before.with("answer", typed, "go", "next"));

        assertThat(answer.statusCode()).isEqualTo(400);
        PageForm again = PageForm.in(answer.body());
        assertThat(again.find("name=\"answer\"[^>]* value=\"([^\"]*)\"")).isEqualTo(typed);
        assertThat(again.find("id=\"refused\" role=\"alert\">([^<]+)</p>")).isNotBlank();
        assertThat(again.hidden()).containsEntry("item", before.hidden().get("item"));
        assertThat(form(ada, sitting, item).html()).contains("value=\"1234\"");
    }

    @Test
    void anAnswerCanBeChangedButNotTakenAway() {
        String sitting = test.begin(ada);
        int item = typing(ada, sitting);
        var unanswered = send(ada, sitting, form(ada, sitting, item).with("answer", ""));
        send(ada, sitting, form(ada, sitting, item).with("answer", "1234"));

        var emptied = send(ada, sitting, form(ada, sitting, item).with("answer", " "));

        assertThat(unanswered.statusCode()).isEqualTo(302);
        assertThat(emptied.statusCode()).isEqualTo(400);
        assertThat(emptied.body()).contains("“1234” stays saved.");
        send(ada, sitting, form(ada, sitting, item).with("answer", "1,3 km"));
        assertThat(form(ada, sitting, item).html())
                .contains("value=\"1,3 km\"")
                .contains("Your answer: 1.3\u202Fkm = 1300\u202Fm.");
    }

    @Test
    void whoeverMovesOnFromAnAnswerThatCouldBeTwoNumbersFirstSeesHowItWasRead() {
        String sitting = test.begin(ada);
        int item = typing(ada, sitting);
        PageForm form = form(ada, sitting, item);

        var first = send(ada, sitting, form.with("answer", "1.200", "go", "next"));
        PageForm seen = form(ada, sitting, item);
        var second = send(ada, sitting, seen.with("answer", "1.200", "go", "next"));

        assertThat(test.within(first)).endsWith("item=" + item);
        assertThat(seen.html()).contains("Your answer: 1.200\u202Fm, not 1200\u202Fm.");
        assertThat(test.within(second)).isNotEqualTo(test.within(first));
    }

    @Test
    void aDoubleClickIsOneAnswer() {
        String sitting = test.begin(ada);
        int item = typing(ada, sitting);
        PageForm form = form(ada, sitting, item);

        var once = send(ada, sitting, form.with("answer", "1234", "go", "next"));
        var twice = send(ada, sitting, form.with("answer", "1234", "go", "next"));

        assertThat(test.within(twice)).isEqualTo(test.within(once));
        assertThat(form(ada, sitting, item).hidden()).containsEntry("sequence", "1");
    }

    @Test
    void anAnswerFromAPageOfAnotherLogInComesBackAsTyped() {
        String sitting = test.begin(ada);
        int item = typing(ada, sitting);
        PageForm old = form(ada, sitting, item);
        Browser phone = test.ada();

        var answer = send(phone, sitting, old.with("answer", "1234", "csrf", phone.formToken()));

        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body()).contains("another log-in").contains("value=\"1234\"");
        PageForm again = PageForm.in(answer.body());
        assertThat(send(phone, sitting, again.with("answer", "1234")).statusCode()).isEqualTo(302);
    }

    @Test
    void aScriptIsToldWhatWasSavedAndWhatWasReadInIt() {
        String sitting = test.begin(ada);
        PageForm form = form(ada, sitting, typing(ada, sitting));

        var saved = sendJson(ada, sitting, form.with("answer", "2,4 km"));
        var again = sendJson(ada, sitting, form.with("answer", "2,4 km"));
        var refused = sendJson(ada, sitting, form.with("answer", "far"));
        var stranger = sendJson(SERVER.stranger(test.school()), sitting, form.hidden());

        assertThat(saved.statusCode()).isEqualTo(200);
        assertThat(saved.body())
                .isEqualTo(
                        "{\"saved\":\"%s\",\"echo\":\"2.4\u202Fkm = 2400\u202Fm\"}"
                                .formatted(time(Duration.ZERO)))
                .isEqualTo(again.body());
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("\"detail\":\"“far” is no number.");
        assertThat(stranger.statusCode()).isEqualTo(401);
        assertThat(stranger.headers().firstValue("Content-Type").orElseThrow())
                .startsWith("application/problem+json");
        assertThat(seenBy(sitting).answers()).hasSize(1);
    }

    private HttpResponse<String> sendJson(
            Browser browser, String sitting, Map<String, String> fields) {
        String form =
                fields.entrySet().stream()
                        .map(e -> e.getKey() + "=" + encoded(e.getValue()))
                        .collect(java.util.stream.Collectors.joining("&"));
        return browser.send(
                browser.request("/" + test.school().code() + sitting + "/answers")
                        .header("Accept", "application/json")
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form))
                        .build());
    }

    private static String encoded(String text) {
        return java.net.URLEncoder.encode(text, java.nio.charset.StandardCharsets.UTF_8);
    }

    @Test
    void nothingIsHandedInWithoutTheTick() {
        String sitting = test.begin(ada);

        var answer = ada.post(sitting + "/hand-in", Map.of());

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("Nothing was handed in.");
        assertThat(ada.get(sitting).statusCode()).isEqualTo(200);
    }

    @Test
    void handingInTwiceIsHandingInOnce() {
        String sitting = test.begin(ada);

        ada.post(sitting + "/hand-in", Map.of("sure", "yes"));
        var twice = ada.post(sitting + "/hand-in", Map.of("sure", "yes"));

        assertThat(test.within(twice)).isEqualTo(sitting + "/result");
        assertThat(ada.get(sitting + "/result").body())
                .contains("0 of 2, 0\u202F%")
                .contains("One safety-critical answer needs a talk");
    }

    @Test
    void whatWasTalkedOverNoLongerWaitsForATalk() {
        String sitting = test.begin(ada);
        PageForm safetyCritical = form(ada, sitting, choosing(ada, sitting));
        ada.post(sitting + "/hand-in", Map.of("sure", "yes"));
        String before = ada.get(sitting + "/result").body();

        Actor ruth = SERVER.actor(test.school(), "ruth");
        UUID item = UUID.fromString(safetyCritical.hidden().get("item"));
        SubjectId student = SERVER.actor(test.school(), "ada").subject();
        SERVER.doors().debriefs().enter(ruth, student, item, Debriefs.Outcome.EXPLAINED_BACK, "");

        assertThat(before)
                .contains("One safety-critical answer needs a talk")
                .contains("<h2>To talk over with your instructor</h2>");
        assertThat(ada.get(sitting + "/result").body())
                .contains("The safety-critical answers that were not right are talked over.")
                .contains("<span class=\"state met\">talked over</span>")
                .doesNotContain("To talk over with your instructor", "to talk over");
    }

    @Test
    void beginningTwiceIsBeginningOnce() {
        assertThat(test.begin(ada)).isEqualTo(test.begin(test.ada()));
        assertThat(ada.get("/tests/" + test.opened().id()).body()).contains("Go on with the test");
    }

    @Test
    void aTestThatIsNotOpenAnyMoreSaysSoAndDoesNotBegin() {
        SERVER.passes(Duration.ofHours(3));

        String rules = ada.get("/tests/" + test.opened().id()).body();
        var answer = ada.post("/tests/" + test.opened().id() + "/begin", Map.of());

        assertThat(rules)
                .contains("Ask your instructor to open it again.")
                .doesNotContain("/begin");
        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body()).contains("This test is not open now.");
        assertThat(ada.get("/course").body()).contains("No test is open for you now.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "?item=1", "/review", "/result"})
    void anothersSittingIsNotThere(String page) {
        String sitting = test.begin(ada);
        SERVER.givenPerson(test.school(), "bob", Role.STUDENT);
        Browser bob = SERVER.logIn(test.school(), "bob");

        assertThat(bob.get(sitting + page).statusCode()).isEqualTo(404);
    }

    @Test
    void anothersSittingTakesNothing() {
        String sitting = test.begin(ada);
        PageForm form = form(ada, sitting, typing(ada, sitting));
        SERVER.givenPerson(test.school(), "bob", Role.STUDENT);
        Browser bob = SERVER.logIn(test.school(), "bob");
        Map<String, String> stolen = form.with("answer", "100", "csrf", bob.formToken());

        assertThat(send(bob, sitting, stolen).statusCode()).isEqualTo(404);
        assertThat(sendJson(bob, sitting, stolen).statusCode()).isEqualTo(404);
        assertThat(bob.post(sitting + "/hand-in", Map.of("sure", "yes")).statusCode())
                .isEqualTo(404);
        assertThat(bob.post("/tests/" + test.opened().id() + "/begin", Map.of()).statusCode())
                .isEqualTo(404);
        assertThat(seenBy(sitting).answers()).isEmpty();
    }

    @Test
    void anItemThatThePaperLacksIsNotThere() {
        String sitting = test.begin(ada);

        for (String item : new String[] {"0", "3", "-1", "x", "1e9"}) {
            assertThat(ada.get(sitting + "?item=" + item).statusCode()).isEqualTo(404);
        }
    }

    @Test
    void anInstructorReadsTheResultAndMaySitNothing() {
        String sitting = test.begin(ada);
        ada.post(sitting + "/hand-in", Map.of("sure", "yes"));
        Browser ruth = SERVER.logIn(test.school(), "ruth");

        assertThat(ruth.get(sitting + "/result").body()).contains("<dd>ada Person</dd>");
        assertThat(ruth.get(sitting).statusCode()).isEqualTo(403);
        assertThat(ruth.get("/course").statusCode()).isEqualTo(200);
    }

    @Test
    void theButtonsMoveThroughThePaper() {
        String sitting = test.begin(ada);

        assertThat(move(sitting, 1, "next")).isEqualTo(sitting + "?item=2");
        assertThat(move(sitting, 2, "back")).isEqualTo(sitting + "?item=1");
        assertThat(move(sitting, 1, "back")).isEqualTo(sitting + "?item=1");
        assertThat(move(sitting, 2, "next")).isEqualTo(sitting + "/review");
        assertThat(move(sitting, 1, "review")).isEqualTo(sitting + "/review");
        assertThat(move(sitting, 2, "stay")).isEqualTo(sitting + "?item=2");
    }

    private String move(String sitting, int item, String go) {
        return test.within(send(ada, sitting, form(ada, sitting, item).with("go", go)));
    }
}
