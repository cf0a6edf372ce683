package org.groundline.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.bank.Shown;
import org.groundline.error.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.List;
import java.util.Locale;

class AnswerReadingTest {
    private static final Shown METRES = new Shown.Number("How far?", "m", true, List.of());
    private static final Shown CHOICE =
            new Shown.Choice("Which?", List.of("one", "two", "three"), List.of());

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "5300; 5300",
                "5,3 km; 5300",
                "5.3km; 5300",
                "5 300 m; 5300",
                "1'200 m; 1200",
                "-1.2; -1.2"
            })
    void aNumberIsReadInTheItemsUnit(String raw, String reading) {
        assertThat(AnswerReading.of(METRES, raw, Locale.ENGLISH).text()).isEqualTo(reading);
    }

    @Test
    void aMinusCountsUnlessTheItemHasNoSign() {
        Shown sink = new Shown.Number("How fast down?", "m/s", false, List.of());
        AnswerReading unsigned = AnswerReading.of(sink, "-1.2", Locale.ENGLISH);
        assertThat(unsigned.text()).isEqualTo("1.2");
        assertThat(unsigned.echo()).isEqualTo("−1.2\u202Fm/s, read as 1.2\u202Fm/s");
        assertThat(AnswerReading.of(METRES, "-1.2", Locale.ENGLISH).text()).isEqualTo("-1.2");
    }

    @Test
    void whereTheLanguageDecidedTheEchoNamesTheOtherNumber() {
        assertThat(AnswerReading.of(METRES, "1.200", Locale.ENGLISH).echo())
                .isEqualTo("1.200\u202Fm, not 1200\u202Fm");
        assertThat(AnswerReading.of(METRES, "1.200", Locale.GERMAN).echo())
                .isEqualTo("1200\u202Fm, not 1,2\u202Fm");
        assertThat(AnswerReading.findWays(CHOICE, "A", Locale.ENGLISH)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "1e999",
                "Infinity",
                "-",
                "12 kg",
                "9999999999999999999999",
                "12 m; drop",
                "0x10"
            })
    void absurdNumbersAreRefusedInWords(String raw) {
        assertThatThrownBy(() -> AnswerReading.of(METRES, raw, Locale.ENGLISH))
                .isInstanceOf(Refusal.Invalid.class)
                .hasMessageMatching(".{10,}");
    }

    @Test
    void aLetterMustBeOneOfTheItems() {
        assertThat(AnswerReading.of(CHOICE, "C", Locale.ENGLISH).text()).isEqualTo("C");
        assertThatThrownBy(() -> AnswerReading.of(CHOICE, "D", Locale.ENGLISH))
                .hasMessageContaining("from A to C");
        assertThatThrownBy(() -> AnswerReading.of(CHOICE, "", Locale.ENGLISH))
                .isInstanceOf(Refusal.Invalid.class);
    }
}
