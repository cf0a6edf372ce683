package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.List;

/// The bank that comes with the program.
class WholeBankTest {
    private final BankReport report = Questions.check(Schemas.BANK);

    @Test
    void theShippedBankHasNoErrors() {
        assertThat(report.errors()).isEmpty();
    }

    @Test
    void everyModuleHasAtLeastTwentyFiveFixedQuestions() {
        assertThat(report.modules()).containsOnlyKeys("EQU", "AER", "MET", "SAF");
        assertThat(report.modules().values())
                .allSatisfy(counts -> assertThat(counts.fixed()).isGreaterThanOrEqualTo(25));
    }

    @Test
    void thereAreAtLeastEightNumericQuestions() {
        assertThat(report.numeric()).isGreaterThanOrEqualTo(8);
    }

    @Test
    void everyQuestionCanBePosedAndIsReadBackEqual() {
        Questions bank = Questions.load(Schemas.BANK);
        for (Question question : bank.all()) {
            for (long seed = 0; seed < 20; seed++) {
                Posed posed = bank.pose(question, seed);
                assertThat(Frozen.readShown(Frozen.write(posed.shown()))).isEqualTo(posed.shown());
                assertThat(Frozen.readKey(Frozen.write(posed.key()))).isEqualTo(posed.key());
            }
        }
    }

    @Test
    void theProgramFindsItsBankAmongItsResources() throws Exception {
        try (BankLocation shipped = BankLocation.shipped()) {
            assertThat(Questions.load(shipped.folder()).hash())
                    .isEqualTo(Questions.load(Schemas.BANK).hash());
        }
    }

    @Test
    void aboutASixthOfTheFixedQuestionsIsSafetyCriticalAtLeast() {
        List<Question> fixed =
                Questions.load(Schemas.BANK).all().stream()
                        .filter(FixedQuestion.class::isInstance)
                        .toList();
        long critical = fixed.stream().filter(Question::safetyCritical).count();
        assertThat(critical * 6).isGreaterThanOrEqualTo(fixed.size());
    }
}
