package org.groundline.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.bank.Key;
import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// Two students of one class, one of whom wants to be asked in German.
class QuestionLanguagesTest {
    private static final TestServer SERVER = TestServer.start();
    private final School school =
            SERVER.givenSchool("s" + UUID.randomUUID().toString().substring(0, 8));
    private final SubjectId ada = SERVER.givenPerson(school, "ada", Role.STUDENT);
    private final SubjectId elif = SERVER.givenPerson(school, "elif", Role.STUDENT);
    private final Intake intake = SERVER.givenIntake(school, "Spring", ada, elif);
    private final Actor english = SERVER.actor(school, "ada");
    private final Actor german = SERVER.actor(school, "elif");
    private final QuestionLanguages languages = SERVER.doors().languages();
    private final Sittings sittings = SERVER.doors().sittings();

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private Opening givenOpening(String module) {
        SERVER.givenPerson(school, "ina", Role.INSTRUCTOR);
        var wish = new Openings.NewOpening(module, intake.id(), Duration.ofHours(2), "Hut");
        return SERVER.doors().openings().open(SERVER.actor(school, "ina"), wish);
    }

    private List<String> canonical(String version) {
        return SERVER.database()
                .inSchool(
                        school.id(),
                        tx ->
                                tx.fetch(
                                                "select canonical from question_version where version = ?",
                                                version)
                                        .getValues(0, String.class));
    }

    @Test
    void whoChoseNothingIsAskedInEnglish() {
        assertThat(languages.listLanguages()).containsExactly("en", "de");
        assertThat(languages.languageOf(english)).isEqualTo("en");
    }

    @Test
    void aChoiceIsKeptAndMayBeChangedBack() {
        languages.choose(german, "de");
        assertThat(languages.languageOf(german)).isEqualTo("de");
        assertThat(languages.languageOf(english)).isEqualTo("en");
        languages.choose(german, "en");
        assertThat(languages.languageOf(german)).isEqualTo("en");
    }

    @Test
    void aLanguageWithoutAQuestionIsRefused() {
        assertThatThrownBy(() -> languages.choose(german, "fr"))
                .isInstanceOf(Refusal.Invalid.class)
                .hasMessage("There are questions in these languages: en, de.");
    }

    @Test
    void ofOneClassEachIsAskedInTheirOwnLanguage() {
        languages.choose(german, "de");
        UUID opening = givenOpening("HUM").id();

        OpenSitting hers = sittings.open(german, sittings.begin(german, opening));
        OpenSitting other = sittings.open(english, sittings.begin(english, opening));

        assertThat(hers.items()).isNotEmpty().allMatch(item -> item.language().equals("de"));
        assertThat(other.items()).isNotEmpty().allMatch(item -> item.language().equals("en"));
    }

    @Test
    void whatHasNoTranslationIsAskedInEnglish() {
        languages.choose(german, "de");

        OpenSitting open = sittings.open(german, sittings.begin(german, givenOpening("AER").id()));

        assertThat(open.items()).isNotEmpty().allMatch(item -> item.language().equals("en"));
    }

    @Test
    void aTranslatedItemIsMarkedLikeAnyOtherAndExplainedInItsLanguage() {
        languages.choose(german, "de");
        UUID opening = givenOpening("HUM").id();

        UUID sitting =
                SERVER.givenSitting(
                        school,
                        "elif",
                        opening,
                        item -> Optional.of(SERVER.rightAnswer(school, item.id())));
        Result result = sittings.getResult(german, sitting);

        assertThat(result.hundredths()).isEqualTo(result.possible());
        Result.ItemResult first = result.items().getFirst();
        var translated =
                TestServer.bank()
                        .translations()
                        .find("de", TestServer.bank().question(first.item().questionId()))
                        .orElseThrow();
        assertThat(first.item().version()).isEqualTo(translated.version());
        assertThat(first.key().rationale())
                .isEqualTo(translated.pose(1).key().rationale())
                .isNotEqualTo(translated.question().rationale());
        assertThat(((Key.Choice) first.key()).beliefs()).isNotEmpty();
    }

    @Test
    void theVersionOfATranslatedItemIsKeptWithTheEnglishThatItFollows() {
        languages.choose(german, "de");
        OpenSitting open = sittings.open(german, sittings.begin(german, givenOpening("HUM").id()));
        Item item = open.items().getFirst();
        String english = TestServer.bank().question(item.questionId()).version();

        assertThat(canonical(item.version()))
                .singleElement()
                .asString()
                .contains("\"language\":\"de\"", "\"follows\":\"" + english + "\"");
        assertThat(canonical(english)).hasSize(1);
    }

    @Test
    void anItemThatWaitsForItsAnswerKeepsItsLanguage() {
        Practices practices = SERVER.doors().practices();
        Item waiting = practices.next(german, "HUM-1").item();
        languages.choose(german, "de");

        assertThat(practices.next(german, "HUM-1").item()).isEqualTo(waiting);
        assertThat(waiting.language()).isEqualTo("en");
        assertThat(practices.next(german, "HUM-2").item().language()).isEqualTo("de");
    }
}
