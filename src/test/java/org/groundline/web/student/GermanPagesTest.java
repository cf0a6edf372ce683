package org.groundline.web.student;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.web.TestServer;
import org.groundline.web.TestServer.Browser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import java.net.http.HttpResponse;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;

/// Choosing German on the account page, and what pages then say of the language of a text.
class GermanPagesTest {
    private static final TestServer SERVER = TestServer.start();
    private static final Pattern STEM =
            Pattern.compile("<p class=\"stem\" id=\"stem\" lang=\"([a-z]+)\">");

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

    private HttpResponse<String> choose(String language) {
        return ada.post("/account/question-language", Map.of("language", language));
    }

    private String practice(String topic) {
        String page = ada.get("/practice/" + topic).body();
        var stem = STEM.matcher(page);
        assertThat(stem.find()).isTrue();
        return stem.group(1);
    }

    @Test
    void theAccountPageOffersTheLanguagesOfTheBank() {
        assertThat(ada.get("/account").body())
                .contains("<option value=\"en\" selected>English</option>")
                .contains("<option value=\"de\">German</option>");
    }

    @Test
    void aChoiceIsToldAndShownAgain() {
        HttpResponse<String> answer = choose("de");

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body())
                .contains("New questions come in this language, where they are translated.")
                .contains("<option value=\"de\" selected>German</option>");
    }

    @Test
    void aLanguageThatIsNotThereIsRefusedAtItsForm() {
        HttpResponse<String> answer = choose("tlh");

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("There are questions in these languages: en, de.");
    }

    @Test
    void aPageSaysInWhichLanguageItsQuestionIs() {
        assertThat(practice("AER-1")).isEqualTo("en");
        choose("de");
        assertThat(practice("HUM-1")).isEqualTo("de");
        assertThat(practice("AER-2")).isEqualTo("en");
    }

    @Test
    void whatExplainsAGermanQuestionIsSaidToBeGermanAndTheRestIsNot() {
        choose("de");
        PageForm form = PageForm.in(ada.get("/practice/HUM-1").body());
        UUID item = UUID.fromString(form.find("name=\"item\" value=\"([^\"]+)\""));
        var sent =
                ada.post("/practice/HUM-1", form.with("answer", SERVER.wrongAnswer(school, item)));
        String address = sent.headers().firstValue("Location").orElseThrow();
        String page = ada.get(address.substring(address.indexOf("/practice"))).body();

        assertThat(page)
                .contains("<html lang=\"en\">")
                .contains("<div lang=\"de\">")
                .containsPattern("wrong: <span lang=\"de\">[^<]{5,}</span>")
                .contains("<h2 id=\"why\">Why</h2>");
    }
}
