package org.groundline.sitting;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.Belief;
import org.groundline.bank.Key;
import org.groundline.school.PolicyRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

class MarkingTest {
    private static final Belief WIND_IGNORED =
            new Belief("wind-ignored", "this leaves the wind out", "It does not.");

    private static final Key CHOICE =
            new Key.Choice(
                    "B", Map.of("A", WIND_IGNORED), "because", List.of(), List.of(), List.of());

    private static final Key NUMBER =
            new Key.Number(
                    new BigDecimal("3150"),
                    new BigDecimal("3162"),
                    new BigDecimal("3258"),
                    "m",
                    List.of(
                            new Key.Mistake(
                                    WIND_IGNORED,
                                    new BigDecimal("5280"),
                                    new BigDecimal("5174.4"),
                                    new BigDecimal("5385.6"),
                                    0)),
                    List.of(),
                    "because",
                    List.of(),
                    List.of());

    @Test
    void aRightLetterGetsTheMarkAndAWrongOneNames() {
        assertThat(Marking.mark(CHOICE, Optional.of("B")).verdict()).isEqualTo(Verdict.RIGHT);
        Mark wrong = Marking.mark(CHOICE, Optional.of("A"));
        assertThat(wrong.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(wrong.hundredths()).isZero();
        assertThat(wrong.belief()).contains(WIND_IGNORED);
        assertThat(Marking.mark(CHOICE, Optional.of("C")).belief()).isEmpty();
    }

    @Test
    void nothingGivenIsUnansweredAndGetsNothing() {
        Mark mark = Marking.mark(NUMBER, Optional.empty());

        assertThat(mark.verdict()).isEqualTo(Verdict.UNANSWERED);
        assertThat(mark.hundredths()).isZero();
        assertThat(mark.possible()).isEqualTo(100);
    }

    @ParameterizedTest
    @CsvSource({
        "3162, RIGHT",
        "3161.999, WRONG",
        "3258, RIGHT",
        "3258.0001, WRONG",
        "3200, RIGHT",
        "5280, WRONG"
    })
    void aNumberIsRightFromTheLowestToTheHighestAcceptedBothIncluded(
            String given, Verdict verdict) {
        assertThat(Marking.mark(NUMBER, Optional.of(given)).verdict()).isEqualTo(verdict);
    }

    @Test
    void aNumberThatMatchesAKnownMistakeIsToldSo() {
        assertThat(Marking.mark(NUMBER, Optional.of("5280")).belief()).contains(WIND_IGNORED);
        assertThat(Marking.mark(NUMBER, Optional.of("9999")).belief()).isEmpty();
    }

    /// Part-FCL FCL.025: 75 % of the marks pass. Nothing is rounded: 74.99 % does not.
    @ParameterizedTest
    @CsvSource({
        "7500, 10000, true",
        "7499, 10000, false",
        "300, 400, true",
        "2200, 3000, false",
        "2300, 3000, true",
        "0, 0, false"
    })
    void seventyFivePercentPassesAndALittleLessDoesNot(
            int hundredths, int possible, boolean passes) {
        assertThat(PolicyRules.DEFAULT.passes(hundredths, possible)).isEqualTo(passes);
    }
}
