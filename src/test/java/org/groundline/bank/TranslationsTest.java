package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.bank.Translations.Standing;
import org.groundline.bank.translation.Kind;
import org.groundline.bank.translation.State;
import org.groundline.error.Refusal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Path;
import java.util.List;

/// Questions in a second language, and what becomes of them when the English moves on.
class TranslationsTest {
    private static final String STRAPS = "leg-straps-open-at-launch";
    private static final String STALE =
            "; export its sheet with `bank sheet`, mend the text, and write 'current' over its"
                    + " state (translation-stale)";

    @TempDir private Path folder;
    private GermanBank german = new GermanBank(new SmallBank(Path.of("")));

    @BeforeEach
    void confirm() {
        german = GermanBank.copiedTo(folder).confirmed();
    }

    @Test
    void aConfirmedTranslationHasNothingAgainstIt() {
        assertThat(german.bank().findings()).isEmpty();
        assertThat(german.bank().load().translations().languages()).containsExactly("en", "de");
    }

    @Test
    void theSameSeedPutsTheSameOptionsUnderTheSameLetters() {
        Questions bank = german.bank().load();
        for (Question question : bank.ofModule("EQU")) {
            TranslatedQuestion translated = bank.translations().find("de", question).orElseThrow();
            for (long seed = 0; seed < 50; seed++) {
                Key.Choice english = (Key.Choice) bank.pose(question, seed).key();
                Key.Choice put = (Key.Choice) translated.pose(seed).key();
                assertThat(put.letter()).isEqualTo(english.letter());
                assertThat(put.beliefs().keySet()).isEqualTo(english.beliefs().keySet());
                put.beliefs()
                        .forEach(
                                (letter, belief) ->
                                        assertThat(english.findBelief(letter).orElseThrow().id())
                                                .isEqualTo(belief.id()));
            }
        }
    }

    @Test
    void aSchoolsOwnEditionIsNotPutInTheWordsOfTheShippedOne() {
        Questions bank = german.bank().load();
        String own = bank.findText(STRAPS).orElseThrow().replace("pilot launches", "pilot starts");
        Question edition = bank.read(own, OwnLists.NONE).question().orElseThrow();

        assertThat(edition.version()).isNotEqualTo(bank.question(STRAPS).version());
        assertThat(bank.translations().find("de", edition)).isEmpty();
    }

    @Test
    void allThatIsShownAndFrozenIsInThatLanguage() {
        Posed posed = german.german(STRAPS).orElseThrow().pose(1);
        assertThat(posed.shown().stem())
                .isEqualTo("Was geschieht, wenn jemand mit *offenen* Beingurten startet?");
        assertThat(((Shown.Choice) posed.shown()).options())
                .containsExactlyInAnyOrder(
                        "Der Pilot kann aus dem Gurtzeug rutschen.",
                        "Der Sitz ist etwas weniger bequem.",
                        "Nichts, der Sitz hält den Piloten.");
        assertThat(posed.key().rationale()).startsWith("Nur die Beingurte");
        assertThat(((Key.Choice) posed.key()).beliefs().values())
                .contains(
                        new Belief(
                                "straps-only-for-comfort",
                                "damit hältst du die Beingurte für eine Bequemlichkeit",
                                "Beingurte halten den Piloten im Gurtzeug."));
        assertThat(Frozen.readKey(Frozen.write(posed.key()))).isEqualTo(posed.key());
    }

    @Test
    void aTranslationHasAVersionOfItsOwnThatNamesTheEnglish() {
        Questions bank = german.bank().load();
        TranslatedQuestion translated = german.german(STRAPS).orElseThrow();
        String english = bank.question(STRAPS).version();
        assertThat(translated.version()).isNotEqualTo(english).matches("[0-9a-f]{64}");
        assertThat(translated.canonical())
                .contains("\"follows\":\"" + english + "\"")
                .contains("\"language\":\"de\"")
                .contains("Beingurte dienen nur der Bequemlichkeit.");
    }

    @Test
    void anotherGermanTextIsAnotherVersionAndAnotherBank() {
        String before = german.german(STRAPS).orElseThrow().version();
        String hash = german.bank().load().hash();
        german.bank().replace(GermanBank.IDEAS, "Beingurte dienen nur", "Beingurte dienen bloß");
        assertThat(german.german(STRAPS).orElseThrow().version()).isNotEqualTo(before);
        assertThat(german.bank().load().hash()).isNotEqualTo(hash);
    }

    @Test
    void whenTheEnglishMovesTheTranslationIsStaleAndWhatMovedIsTold() {
        german.bank()
                .replace(SmallBank.FIXED, "a little less comfortable", "less comfortable")
                .replace(SmallBank.FIXED, "Only the leg straps keep", "The leg straps keep");
        assertThat(german.german(STRAPS)).isEmpty();
        assertThat(german.german("lowest-sink-rate")).isPresent();
        assertThat(german.bank().findings())
                .containsExactly(
                        "de/EQU/EQU-1-harness.yaml:4: warning: question "
                                + STRAPS
                                + " is stale: what moved: option 2, rationale"
                                + STALE);
    }

    @Test
    void whenOnlyAnIdeaMovesThatIsToldOfTheQuestionsBeforeIt() {
        german.bank()
                .replace(
                        "misconceptions.yaml",
                        "Leg straps keep the pilot",
                        "Only leg straps keep the pilot");
        assertThat(german.bank().findings())
                .anySatisfy(
                        f ->
                                assertThat(f)
                                        .startsWith("de/misconceptions.yaml:3: warning:")
                                        .contains("what moved: right"))
                .anySatisfy(
                        f ->
                                assertThat(f)
                                        .contains(STRAPS)
                                        .contains(
                                                "none of its texts moved, but something behind them"));
    }

    @Test
    void aQuestionOfWhichAnIdeaIsNotTranslatedIsPutInEnglish() {
        String ideas = german.bank().read(GermanBank.IDEAS);
        int second = ideas.indexOf("  - id: harness-holds-by-itself");
        german.bank().write(GermanBank.IDEAS, ideas.substring(0, second));
        assertThat(german.german(STRAPS)).isEmpty();
        assertThat(german.bank().findings())
                .contains(
                        "de/EQU/EQU-1-harness.yaml:4: warning: question "
                                + STRAPS
                                + " is put in English, as there is no current translation of"
                                + " harness-holds-by-itself; translate it in"
                                + " de/misconceptions.yaml (translation-lacks-idea)");
    }

    @Test
    void numbersStayInEnglish() {
        Questions bank = german.bank().load();
        assertThat(bank.translations().find("de", bank.question("glide-distance-in-wind")))
                .isEmpty();
    }

    @Test
    void theStandingOfEachTranslationOfAModuleIsTold() {
        german.bank().replace(SmallBank.FIXED, "*open* leg straps", "**open** leg straps");
        List<Standing> standings = german.bank().load().translations().standings("de", "EQU");
        assertThat(standings)
                .contains(
                        new Standing(Kind.MODULE, "EQU", State.CURRENT),
                        new Standing(Kind.TOPIC, "EQU-1", State.MISSING),
                        new Standing(Kind.MISCONCEPTION, "harness-holds-by-itself", State.CURRENT),
                        new Standing(Kind.QUESTION, STRAPS, State.STALE),
                        new Standing(Kind.QUESTION, "lowest-sink-rate", State.CURRENT));
        assertThat(standings).noneMatch(s -> s.id().equals("wind-ignored"));
    }

    @Test
    void aTitleIsGivenInALanguageOrNotAtAll() {
        Translations translations = german.bank().load().translations();
        assertThat(translations.findText("de", Kind.MODULE, "EQU")).contains("Ausrüstung");
        assertThat(translations.findText("de", Kind.TOPIC, "EQU-1")).isEmpty();
        assertThat(translations.findText("fr", Kind.MODULE, "EQU")).isEmpty();
    }

    @Test
    void aSheetOfNoModuleOrNoLanguageIsRefused() {
        Translations translations = german.bank().load().translations();
        assertThatThrownBy(() -> translations.sheet("de", "XYZ"))
                .isInstanceOf(Refusal.NotFound.class)
                .hasMessage("The course has no module 'XYZ'.");
        assertThatThrownBy(() -> translations.sheet("en", "EQU"))
                .isInstanceOf(Refusal.NotFound.class);
        assertThatThrownBy(() -> translations.sheet("zz", "EQU"))
                .isInstanceOf(Refusal.NotFound.class);
    }
}
