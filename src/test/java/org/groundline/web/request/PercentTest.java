package org.groundline.web.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.error.Refusal;
import org.groundline.school.PolicyRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.math.BigDecimal;

class PercentTest {
    private static final String SIGN = "\u202F%";

    @ParameterizedTest(name = "{0} of {1} beside {3}")
    @CsvSource({
        "2400, 3000,  7500, 80,    75",
        "2200, 3000,  7500, 73,    75",
        "7499, 10000, 7500, 74,    75",
        "7500, 10000, 7500, 75,    75",
        "0,    3000,  7500, 0,     75",
        "3000, 3000,  7500, 100,   75",
        "7540, 10000, 7533, 75.40, 75.33",
        "7532, 10000, 7533, 75.32, 75.33",
        "2200, 3000,  7550, 73.3,  75.5",
        "2250, 3000,  7550, 75.0,  75.5",
        "3000, 3000,  7533, 100.00, 75.33",
        "1,    10000, 1,    0.01,  0.01"
    })
    void marksHaveTheDecimalsOfThePassMarkAndAreCutOff(
            int gained, int possible, int mark, String shown, String passMark) {
        assertThat(Percent.gained(gained, possible, mark)).isEqualTo(shown + SIGN);
        assertThat(Percent.gainedText(gained, possible, mark)).isEqualTo(shown);
        assertThat(Percent.mark(mark)).isEqualTo(passMark + SIGN);
        assertThat(Percent.markText(mark)).isEqualTo(passMark);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 33, 5_000, 6_666, 6_670, 7_500, 7_533, 7_550, 9_999, 10_000})
    void aFailNeverReadsAsThePassMarkAndAPassNeverReadsBelowIt(int mark) {
        var rules = new PolicyRules(mark, 10, 15, 5);
        for (int possible = 1; possible <= 120; possible++) {
            for (int gained = 0; gained <= possible; gained++) {
                String shown = Percent.gainedText(100 * gained, 100 * possible, mark);
                boolean reads =
                        new BigDecimal(shown).compareTo(new BigDecimal(Percent.markText(mark)))
                                >= 0;
                assertThat(reads)
                        .as("%d of %d: %s", gained, possible, shown)
                        .isEqualTo(rules.passes(100 * gained, 100 * possible));
            }
        }
    }

    @Test
    void sharesAreCutOff() {
        assertThat(Percent.whole(2, 3)).isEqualTo("66" + SIGN);
        assertThat(Percent.whole(0, 0)).isEqualTo("0" + SIGN);
        assertThat(Percent.shareText(2, 3)).isEqualTo("66.66");
        assertThat(Percent.shareText(1, 2)).isEqualTo("50");
        assertThat(Percent.shareText(3, 3)).isEqualTo("100");
        assertThat(Percent.shareText(2.0 / 3)).isEqualTo("66.66");
        assertThat(Percent.shareText(0.125)).isEqualTo("12.5");
    }

    @Test
    void aShareThatNoBinaryNumberIsReadsAsItIsWritten() {
        for (int percent = 0; percent <= 100; percent++) {
            double share = Double.parseDouble(BigDecimal.valueOf(percent, 2).toPlainString());

            assertThat(Percent.whole(share)).isEqualTo(percent + SIGN);
            assertThat(Percent.shareText(share)).isEqualTo(String.valueOf(percent));
        }
    }

    @Test
    void whatIsReadIsWhatWasWritten() {
        for (int mark = 1; mark <= 10_000; mark++) {
            assertThat(Percent.read("passMark", Percent.markText(mark))).isEqualTo(mark);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "75%", "75,5", "75.333", "-1", "1e2", ".5", "75.", "1000"})
    void whatIsNoPercentageIsRefusedByName(String text) {
        assertThatThrownBy(() -> Percent.read("passMark", text))
                .isInstanceOfSatisfying(
                        Refusal.Invalid.class,
                        refusal -> assertThat(refusal.field()).isEqualTo("passMark"));
    }
}
