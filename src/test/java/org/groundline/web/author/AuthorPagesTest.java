package org.groundline.web.author;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.Question;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.web.TestServer;
import org.groundline.web.TestServer.Browser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// The pages on which questions are found, written and reviewed.
class AuthorPagesTest {
    private static final TestServer SERVER = TestServer.start();
    private final School school =
            SERVER.givenSchool("s" + UUID.randomUUID().toString().substring(0, 8));
    private final Browser author = given("ute", Role.AUTHOR);
    private final Browser reviewer = given("rita", Role.REVIEWER);

    private Browser given(String name, Role role) {
        SERVER.givenPerson(school, name, role);
        return SERVER.logIn(school, name);
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private static Map<String, String> filled() {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("deed", "keep");
        form.put("since", "0");
        form.put("change", "substantive");
        form.put("id", "buckle-opened-for-a-photo");
        form.put("objective", "EQU-1.2");
        form.put("level", "judge");
        form.put("safetyCritical", "yes");
        form.put("stem", "You opened one leg strap for a photo. What do you do before you launch?");
        form.put("option1", "Close it and begin the whole check again");
        form.put("option2", "Close it and launch, the rest was checked");
        form.put("option3", "Launch, as the chest strap is closed");
        form.put("option4", "");
        form.put("key", "1");
        form.put("idea1", "");
        form.put("idea2", "earlier-check-counts");
        form.put("idea3", "chest-strap-holds-pilot");
        form.put(
                "rationale",
                "After any unbuckling the whole check begins again. A chest strap holds nobody.");
        form.put("practice", "yes");
        return form;
    }

    private static Map<String, String> filled(String field, String text) {
        Map<String, String> form = filled();
        form.put(field, text);
        return form;
    }

    private static final String HERE = "/bank/questions/buckle-opened-for-a-photo";

    private static String hidden(HttpResponse<String> page, String field) {
        Matcher found =
                Pattern.compile("name=\"" + field + "\" value=\"([^\"]+)\"").matcher(page.body());
        assertThat(found.find()).as("field %s in %s", field, page.body()).isTrue();
        return found.group(1);
    }

    @Test
    void aQuestionGoesFromTheFormToTheStudents() {
        assertThat(author.post("/bank/drafts", filled()).statusCode()).isEqualTo(302);
        var draft = author.get(HERE);
        assertThat(draft.body()).contains("Submit for review", "begin the whole check again");
        author.post(HERE + "/submitted", Map.of("edition", hidden(draft, "edition")));
        assertThat(author.get(HERE).body())
                .contains("waits for a second person")
                .doesNotContain(">Approve<");

        var review = reviewer.get(HERE);
        assertThat(review.body()).contains(">Approve<", "Send back");
        var approved =
                reviewer.post(
                        HERE + "/approved",
                        Map.of(
                                "edition",
                                hidden(review, "edition"),
                                "version",
                                hidden(review, "version"),
                                "from",
                                "2027-05-01",
                                "until",
                                ""));

        assertThat(approved.statusCode()).isEqualTo(302);
        assertThat(reviewer.get(HERE).body()).contains("<td>live</td>", "rita Person");
        assertThat(reviewer.get("/bank?state=live").body()).contains("1 of ");
    }

    @Test
    void whatIsWrongIsToldAndNothingThatWasTypedIsLost() {
        var checked = author.post("/bank/drafts", filled("deed", "check"));
        assertThat(checked.body()).contains("Nothing stands against it.", "for a photo");

        var wrong = filled("idea3", "no-such-idea");
        wrong.put("deed", "check");
        var told = author.post("/bank/drafts", wrong);
        assertThat(told.body())
                .contains("names the unknown misconception", "no-such-idea", "for a photo")
                .doesNotContain("Nothing stands against it.");

        var nameless = author.post("/bank/drafts", filled("id", ""));
        assertThat(nameless.statusCode()).isEqualTo(400);
        assertThat(nameless.body()).contains("Give the question an id", "for a photo");
    }

    @Test
    void aDraftWithErrorsIsKeptAndShownAsSuch() {
        assertThat(author.post("/bank/drafts", filled("idea3", "no-such-idea")).statusCode())
                .isEqualTo(302);

        assertThat(author.get(HERE).body())
                .contains("The text has errors")
                .doesNotContain("Submit for review");
        assertThat(author.get(HERE + "/edit").body()).contains("no-such-idea");
    }

    @Test
    void whoWritesOnAnOlderEditionIsToldSoAndKeepsTheText() {
        author.post("/bank/drafts", filled());

        var late = author.post("/bank/drafts", filled("stem", "Quite another stem, is it not?"));

        assertThat(late.statusCode()).isEqualTo(412);
        assertThat(late.body()).contains("Somebody else has written", "Quite another stem");
    }

    @Test
    void questionsAreFoundByWordsAndPlace() {
        var all = author.get("/bank");
        assertThat(all.body())
                .contains("%1$d of %1$d questions".formatted(TestServer.bank().all().size()));

        var found = author.get("/bank?words=CARBON+monoxide+&place=HUM&kind=fixed");
        assertThat(found.body()).contains("HUM-1").doesNotContain("· AER-");
        assertThat(author.get("/bank?words=zzzzqq").body()).contains("No question fits.");
        assertThat(author.get("/bank?from=50").body()).contains("rel=\"prev\"", "rel=\"next\"");
        assertThat(author.get("/bank?from=nonsense").statusCode()).isEqualTo(200);
    }

    @Test
    void aTemplateShowsTwentyInstancesWithItsMistakes() {
        var page = author.get("/bank/questions/glide-distance-in-wind?instances=20");

        assertThat(author.get("/bank/questions/glide-distance-in-wind").body())
                .contains("Show twenty instances");
        assertThat(author.get("/bank/questions/bar-reaches-half-its-travel").body())
                .doesNotContain("Show twenty instances");
        assertThat(page.body()).contains("Instance 20", "accepted from", "<svg");
    }

    @Test
    void aShippedQuestionIsComparedWithTheSchoolsEdition() {
        Question shipped = TestServer.bank().ofTopic("EQU-1").getFirst();
        String path = "/bank/questions/" + shipped.id();
        String text = TestServer.bank().findText(shipped.id()).orElseThrow();
        Map<String, String> form =
                Map.of(
                        "deed", "keep",
                        "since", "0",
                        "change", "editorial",
                        "text",
                                text.replace(
                                        "rationale: >\n", "rationale: >\n      Readclosely.\n"));

        assertThat(author.post("/bank/drafts", form).statusCode()).isEqualTo(302);

        assertThat(author.get(path + "/comparison").body())
                .contains("<ins>Readclosely.</ins>", "changed", "same");
        assertThat(author.get(path + "/comparison?left=7").statusCode()).isEqualTo(404);
    }

    @Test
    void whatAnAuthorWritesCannotActOnAReadersPage() {
        author.post(
                "/bank/drafts",
                filled("stem", "What does <script>alert(1)</script> do before the launch, here?"));

        assertThat(author.get(HERE).body()).doesNotContain("<script>alert");
        assertThat(author.get(HERE + "/edit").body()).doesNotContain("<script>alert");
        assertThat(author.get("/bank?words=alert").body()).doesNotContain("<script>alert");
    }

    @Test
    void theWayToNationalLawShowsEachPointAndLeadsToItsQuestion() {
        Browser chief = given("cara", Role.CHIEF_INSTRUCTOR);
        assertThat(chief.get("/bank/air-law").body()).contains("No country is chosen yet.");
        assertThat(chief.post("/bank/air-law", Map.of("country", "Q9")).statusCode())
                .isEqualTo(400);
        assertThat(chief.post("/bank/air-law", Map.of("country", "xa", "pack", "EU")).statusCode())
                .isEqualTo(302);

        var page = chief.get("/bank/air-law");

        assertThat(page.body())
                .contains("The pack is not live yet", "value=\"XA\"", "new?objective=LAW-3.1");
        assertThat(chief.get("/bank/new?objective=LAW-3.1").body()).contains("value=\"XA: \"");
    }

    @Test
    void ownListsKeepTheRulesOfTheBank() {
        Map<String, String> source =
                Map.of(
                        "sourceId", "act-on-free-flight",
                        "title", "Act on free flight",
                        "publisher", "An invented office",
                        "year", "2027",
                        "read", "verified");
        assertThat(author.post("/bank/lists/sources", source).statusCode()).isEqualTo(302);
        assertThat(author.get("/bank/lists").body()).contains("Act on free flight");

        var refused =
                author.post(
                        "/bank/lists/misconceptions",
                        Map.of("id", "Wrong Form", "wrong", "x", "right", "y", "feedback", "z"));
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("small letters", "Wrong Form");
    }
}
