package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.error.Refusal;
import org.groundline.ledger.Digests;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

class QuestionsTest {
    private static final String FIXED_ID = "leg-straps-open-at-launch";
    private static final String NUMERIC_ID = "glide-distance-in-wind";

    @TempDir private Path folder;

    private final Questions bank = Questions.load(SmallBank.SOUND);

    @Test
    void everythingIsFoundByItsId() {
        Question question = bank.question(FIXED_ID);
        assertThat(question.objective()).isEqualTo("EQU-1.1");
        assertThat(question.topic()).isEqualTo("EQU-1");
        assertThat(question.module()).isEqualTo("EQU");
        assertThat(question.level()).isEqualTo(Level.RECALL);
        assertThat(question.safetyCritical()).isTrue();
        assertThat(bank.misconception("wind-ignored").feedback())
                .isEqualTo("this leaves the wind out");
        assertThat(bank.objective("AER-2.1").stage()).isEqualTo(Stage.FIRST_HIGH_FLIGHT);
        assertThat(bank.findQuestion("no-such-question")).isEmpty();
    }

    @Test
    void questionsAreFoundByTopicAndModuleInTheOrderOfTheirIds() {
        assertThat(bank.ofTopic("EQU-1"))
                .extracting(Question::id)
                .containsExactly(FIXED_ID, "lowest-sink-rate");
        assertThat(bank.ofModule("AER")).extracting(Question::id).containsExactly(NUMERIC_ID);
        assertThat(bank.ofTopic("AER-9")).isEmpty();
        assertThat(bank.ofModule("XXX")).isEmpty();
    }

    @Test
    void theCourseIsReadInItsOrder() {
        Course course = bank.course();
        assertThat(course.title()).isEqualTo("A small course");
        assertThat(course.modules()).extracting(Module::id).containsExactly("EQU", "AER");
        assertThat(course.modules().get(0).demonstrations())
                .containsExactly(
                        new Demonstration(
                                "EQU-D1",
                                "The check recited on the harness",
                                "Every connection is touched and named.",
                                true));
    }

    @Test
    void anUnknownIdIsRefusedInWordsWithoutRepeatingAllOfIt() {
        assertThatThrownBy(() -> bank.question("x".repeat(10_000)))
                .isInstanceOf(Refusal.NotFound.class)
                .hasMessage("There is no question '" + "x".repeat(64) + "' in the bank.");
    }

    @Test
    void aBankWithAnErrorDoesNotLoadAndSaysWhereAndWhy() {
        SmallBank spoilt = SmallBank.copiedTo(folder);
        spoilt.replace(SmallBank.FIXED, "level: recall", "level: easy");
        assertThatThrownBy(spoilt::load)
                .isInstanceOf(BankFault.class)
                .hasMessage(
                        "EQU/EQU-1-harness.yaml:5: error: question leg-straps-open-at-launch has"
                                + " the unknown level 'easy'; write one of recall, apply, judge"
                                + " (value)");
    }

    @Test
    void aBankWithAWarningLoads() {
        SmallBank bank = SmallBank.copiedTo(folder).write("notes.txt", "a thought");
        assertThat(bank.findings()).hasSize(1);
        assertThat(bank.load().all()).hasSize(3);
    }

    @Test
    void aQuestionOfOneJurisdictionIsPutToNobodyByItsTopic(@TempDir Path folder) {
        SmallBank spoilt = SmallBank.copiedTo(folder);
        spoilt.replace(
                SmallBank.FIXED,
                "source: common practice",
                "source: common practice\n    jurisdiction: \"XA: Act on free flight, first edition\"");
        Questions questions = Questions.load(spoilt.folder());

        List<Question> elsewhere =
                questions.all().stream().filter(q -> q.jurisdiction().isPresent()).toList();

        assertThat(elsewhere).hasSize(1);
        assertThat(questions.ofTopic("EQU-1")).isNotEmpty().doesNotContainAnyElementsOf(elsewhere);
    }

    @Test
    void aJurisdictionWithoutCodeOrEditionIsAnError(@TempDir Path folder) {
        SmallBank spoilt = SmallBank.copiedTo(folder);
        spoilt.replace(
                SmallBank.FIXED,
                "source: common practice",
                "source: common practice\n    jurisdiction: first edition");

        assertThat(spoilt.findings())
                .singleElement()
                .asString()
                .contains("has the jurisdiction 'first edition'; write the code of the country");
    }

    @Test
    void aReportCountsByModule() {
        BankReport report = Questions.check(SmallBank.SOUND);
        assertThat(report.fixed()).isEqualTo(2);
        assertThat(report.numeric()).isEqualTo(1);
        assertThat(report.misconceptions()).isEqualTo(6);
        assertThat(report.modules())
                .containsEntry("EQU", new BankReport.Counts(2, 0))
                .containsEntry("AER", new BankReport.Counts(0, 1));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"lowest-sink-rate", "glide-distance-in-wind"})
    void theContentOfAQuestionIsCanonicalAndComplete(String id) throws Exception {
        Path golden = SmallBank.SOUND.resolveSibling("canonical/" + id + ".json");
        assertThat(bank.question(id).canonical() + "\n").isEqualTo(Files.readString(golden));
    }

    @Test
    void theVersionIsTheHashOfTheContent() {
        Question question = bank.question(NUMERIC_ID);
        assertThat(question.version()).isEqualTo(Digests.hex(question.canonical()));
        assertThat(question.version()).matches("[0-9a-f]{64}");
    }

    @Test
    void aChangedMisconceptionChangesTheVersionsThatShowItAndNoOther() {
        SmallBank changed = SmallBank.copiedTo(folder);
        changed.replace("misconceptions.yaml", "this leaves the wind out", "this forgets the wind");
        Questions after = changed.load();
        assertThat(after.question(NUMERIC_ID).version())
                .isNotEqualTo(bank.question(NUMERIC_ID).version());
        assertThat(after.question(FIXED_ID)).isEqualTo(bank.question(FIXED_ID));
        assertThat(after.hash()).isNotEqualTo(bank.hash());
    }

    @Test
    void spacingInFilesAndFormulasAndTheWayNumbersAreWrittenChangeNoVersion() {
        SmallBank changed = SmallBank.copiedTo(folder);
        changed.replace(SmallBank.NUMERIC, "step: 0.5", "step: 0.50")
                .replace(SmallBank.NUMERIC, "height * glide_ratio\n", "height  *  glide_ratio\n")
                .replace(SmallBank.NUMERIC, "topic: AER-2", "# A remark\ntopic: AER-2");
        Questions after = changed.load();
        assertThat(after.question(NUMERIC_ID)).isEqualTo(bank.question(NUMERIC_ID));
        assertThat(after.hash()).isEqualTo(bank.hash());
    }

    /// What is computed has a formula and a step where others have a list; how a formula is spaced
    /// and a number written does not count here either. All versions from before stay as they were:
    /// their content, above, is the same to the letter.
    @Test
    void theContentHoldsHowADrawnValueIsComputed() {
        String computed = "height: {formula: 'wind * %s [s]', round: %s, unit: m}";
        String range = "height: {from: 400, to: 800, step: 50, unit: m}";
        SmallBank changed = SmallBank.copiedTo(folder);
        changed.replace(SmallBank.NUMERIC, range, computed.formatted("150", "50"));
        Question question = changed.load().question(NUMERIC_ID);
        assertThat(question.canonical())
                .contains(
                        "\"height\":{\"formula\":\"wind * 150 [s]\",\"round\":\"50\",\"unit\":\"m\"}");
        changed.replace(
                SmallBank.NUMERIC, "wind * 150 [s]', round: 50", "wind  * 150 [s]', round: 50.0");
        assertThat(changed.load().question(NUMERIC_ID)).isEqualTo(question);
        changed.replace(SmallBank.NUMERIC, "round: 50.0", "round: 100");
        assertThat(changed.load().question(NUMERIC_ID)).isNotEqualTo(question);
    }

    @Test
    void aChangedFormulaChangesTheVersion() {
        SmallBank changed = SmallBank.copiedTo(folder);
        changed.replace(SmallBank.NUMERIC, "from: 34, to: 42", "from: 34, to: 40");
        assertThat(changed.load().question(NUMERIC_ID).version())
                .isNotEqualTo(bank.question(NUMERIC_ID).version());
    }

    @Test
    void aChangedSyllabusChangesTheHashOfTheBankAndNoVersion() {
        SmallBank changed = SmallBank.copiedTo(folder);
        changed.replace("syllabus.yaml", "stage: ground handling", "stage: first hop");
        Questions after = changed.load();
        assertThat(after.hash()).isNotEqualTo(bank.hash());
        assertThat(after.all()).isEqualTo(bank.all());
    }
}
