package org.groundline.bank.numeric.posed;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.numeric.posed.PosedNumber.MistakeRange;
import org.junit.jupiter.api.Test;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

class ChoiceFormTest {
    private static final Cause TEN = new Cause.PowerOfTen(1);

    @Test
    void keyAndMistakesAscendEachWithItsCause() {
        var choice = ChoiceForm.of(posed(mistake("doubled", "60"), mistake("halved", "-15")));
        assertThat(choice.orElseThrow().options())
                .containsExactly(
                        new PosedOption.Wrong("−15\u202Fm", new Cause.Idea("halved")),
                        new PosedOption.Right("30\u202Fm"),
                        new PosedOption.Wrong("60\u202Fm", new Cause.Idea("doubled")));
    }

    @Test
    void aChoiceIsNotOfferedWithFewerThanTwoMistakes() {
        assertThat(ChoiceForm.of(posed(mistake("doubled", "60")))).isEmpty();
        assertThat(ChoiceForm.of(posed())).isEmpty();
    }

    @Test
    void slipsAreNoOptions() {
        assertThat(ChoiceForm.of(posed(mistake("doubled", "60"), range(TEN, "300")))).isEmpty();
    }

    @Test
    void whatPrintsAlikeIsOneOption() {
        assertThat(ChoiceForm.of(posed(mistake("doubled", "60"), mistake("twice", "60"))))
                .isEmpty();
    }

    @Test
    void ofFourMistakesTheFirstThreeAreOptions() {
        var choice =
                ChoiceForm.of(
                        posed(
                                mistake("a", "60"),
                                mistake("b", "90"),
                                mistake("c", "10"),
                                mistake("d", "1")));
        assertThat(choice.orElseThrow().options())
                .extracting(PosedOption::text)
                .containsExactly("10\u202Fm", "30\u202Fm", "60\u202Fm", "90\u202Fm");
    }

    private static MistakeRange mistake(String idea, String shown) {
        return range(new Cause.Idea(idea), shown);
    }

    private static MistakeRange range(Cause cause, String shown) {
        var value = new BigDecimal(shown);
        return new MistakeRange(cause, 0, value, value, value);
    }

    private static PosedNumber posed(MistakeRange... mistakes) {
        var answer = new BigDecimal("30");
        return new PosedNumber(
                Map.of(),
                "How far?",
                "m",
                true,
                answer,
                answer,
                answer,
                Stream.of(mistakes).toList(),
                List.of(),
                "So far.",
                Optional.empty());
    }
}
