package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;

import static java.util.stream.Collectors.joining;

import org.groundline.diagram.Purpose;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.stream.Stream;

/// The bank that comes with the program.
class WholeBankTest {
    private static final BankReport REPORT = Questions.check(Schemas.BANK);
    private static final Questions BANK = Questions.load(Schemas.BANK);

    @Test
    void theShippedBankHasNoErrors() {
        assertThat(REPORT.errors()).isEmpty();
    }

    @Test
    void everyModuleHasAtLeastFiftyFiveFixedQuestions() {
        assertThat(REPORT.modules())
                .containsOnlyKeys("EQU", "AER", "MET", "LAW", "FLY", "SAF", "HUM", "DAY");
        assertThat(REPORT.modules().values())
                .allSatisfy(counts -> assertThat(counts.fixed()).isGreaterThanOrEqualTo(55));
        assertThat(REPORT.misconceptions()).isGreaterThanOrEqualTo(120);
    }

    @Test
    void nothingNeedsALook() {
        assertThat(REPORT.findings()).isEmpty();
    }

    @Test
    void airLawHasACoreAndItsPacksNameTheirEdition() {
        List<FixedQuestion> law =
                fixed().stream().filter(question -> question.module().equals("LAW")).toList();
        assertThat(law)
                .filteredOn(question -> question.jurisdiction().isEmpty())
                .hasSizeGreaterThanOrEqualTo(30);
        assertThat(law)
                .flatExtracting(question -> question.jurisdiction().stream().toList())
                .isNotEmpty()
                .allSatisfy(where -> assertThat(where.edition()).containsPattern("(923/2012|103)"));
    }

    @Test
    void atLeastFortyQuestionsHaveAnIllustration() {
        assertThat(fixed())
                .filteredOn(question -> !question.figures().isEmpty())
                .hasSizeGreaterThanOrEqualTo(40);
    }

    private static List<FixedQuestion> fixed() {
        return BANK.all().stream()
                .filter(FixedQuestion.class::isInstance)
                .map(FixedQuestion.class::cast)
                .toList();
    }

    @Test
    void thereAreAtLeastEightNumericQuestions() {
        assertThat(REPORT.numeric()).isGreaterThanOrEqualTo(8);
    }

    @Test
    void everyQuestionCanBePosedAndIsReadBackEqual() {
        for (Question question : BANK.all()) {
            for (long seed = 0; seed < 20; seed++) {
                Posed posed = BANK.pose(question, seed);
                assertThat(Frozen.readShown(Frozen.write(posed.shown()))).isEqualTo(posed.shown());
                assertThat(Frozen.readKey(Frozen.write(posed.key()))).isEqualTo(posed.key());
            }
        }
    }

    /// So whoever finds the beginning of a rationale in a page has found a leak.
    @Test
    void noRationaleBeginsWithWhatTheStudentSees() {
        for (Question question : BANK.all()) {
            Posed posed = BANK.pose(question, 1);
            String rationale = posed.key().rationale();
            assertThat(textOf(posed.shown()))
                    .as(question.id())
                    .doesNotContain(rationale.substring(0, Math.min(40, rationale.length())));
        }
    }

    private static String textOf(Shown shown) {
        Stream<String> options =
                switch (shown) {
                    case Shown.Choice choice -> choice.options().stream();
                    case Shown.Number number -> Stream.of(number.unit());
                };
        Stream<String> drawings =
                shown.figures().stream().map(f -> f.draw(Purpose.STEM, "f").description());
        return Stream.of(Stream.of(shown.stem()), options, drawings)
                .flatMap(texts -> texts)
                .collect(joining(" "));
    }

    @Test
    void theProgramFindsItsBankAmongItsResources() throws Exception {
        try (BankLocation shipped = BankLocation.shipped()) {
            assertThat(Questions.load(shipped.folder()).hash()).isEqualTo(BANK.hash());
        }
    }

    @Test
    void aboutASixthOfTheFixedQuestionsIsSafetyCriticalAtLeast() {
        List<FixedQuestion> fixed = fixed();
        long critical = fixed.stream().filter(Question::safetyCritical).count();
        assertThat(critical * 6).isGreaterThanOrEqualTo(fixed.size());
    }
}
