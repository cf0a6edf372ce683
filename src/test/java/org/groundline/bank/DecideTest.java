package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.nio.file.Path;
import java.util.stream.LongStream;

/// A template that decides, beside the small bank.
class DecideTest {
    private static final String FILE = "AER/AER-2-reach.yaml";
    private static final String TEXT =
            Schemas.text(SmallBank.SOUND.resolveSibling("decide/AER-2-reach.yaml"));

    @TempDir private Path folder;

    @Test
    void itIsAskedAsAChoiceInTheStatedOrderWithItsSteps() {
        Questions bank = bank(TEXT).load();
        Posed posed = bank.pose(bank.question("does-it-reach-the-field"), 3);
        assertThat(((Shown.Choice) posed.shown()).options())
                .containsExactly(
                        "No, you come down short of the field.",
                        "Yes, but with less than 100\u202Fm left.",
                        "Yes, with 100\u202Fm or more left.");
        Key.Choice key = (Key.Choice) posed.key();
        assertThat(key.beliefs()).hasSize(2).doesNotContainKey(key.letter());
        assertThat(key.steps()).hasSize(2);
        assertThat(key.steps().getFirst()).startsWith("The glide takes distance divided by");
        assertThat(key.rationale()).doesNotContain("{");
        assertThat(Frozen.readKey(Frozen.write(key))).isEqualTo(key);
    }

    @Test
    void allLettersAreKeysInTheEnd() {
        Questions bank = bank(TEXT).load();
        Question question = bank.question("does-it-reach-the-field");
        assertThat(LongStream.range(0, 200).mapToObj(seed -> bank.pose(question, seed).key()))
                .extracting(key -> ((Key.Choice) key).letter())
                .contains("A", "B", "C");
    }

    @Test
    void itsContentHoldsTheBoundsAndTheOptionsWithTheirIdeas() {
        String canonical = bank(TEXT).load().question("does-it-reach-the-field").canonical();
        assertThat(canonical)
                .contains("\"decide\":{\"bounds\":[\"0\",\"100\"],\"formula\":\"height - needed\"")
                .contains("\"text\":\"Yes, with {reserve} or more left.\"")
                .contains("this adds the headwind")
                .doesNotContain("\"answer\":", "between");
    }

    @ParameterizedTest(name = "{0} → {1}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        level: judge | level: apply | :5: error: template does-it-reach-the-field decides and has the level apply; write judge: whoever decides in a situation judges it (value) | true
        between: [-300, 500] | size: 3 | :20: error: template does-it-reach-the-field, decide has the unknown key 'size'; the known keys are formula, unit, tolerance, bounds, between (unknown-key) | true
        text: Yes, with {reserve} or more left. | text: None of the above. | :26: error: template does-it-reach-the-field, option 3 refers to the other options as a whole; each option stands for itself, write an answer of its own (option-all-or-none) | false
        misconception: wind-added | misconception: wind-aded | :25: error: template does-it-reach-the-field, option 2 names the unknown misconception 'wind-aded'; did you mean 'wind-added'? (misconception-unknown) | false
        bounds: [0, 100] | bounds: [100, 0] | :19: error: template does-it-reach-the-field at decide, bounds: [100, 0] are no ascending numbers; write numbers in the unit, without it, the lowest first (template) | false
        audience: core | audience: core¶    mistakes: [] | :7: error: template does-it-reach-the-field has 'mistakes' beside what decides; keep either answer and mistakes, or decide and options (value) | true
        """)
    void whatIsWrongIsToldWithItsLine(String old, String text, String finding, boolean form) {
        String spoilt = TEXT.replace(old, text.replace("¶", "\n"));
        assertThat(spoilt).isNotEqualTo(TEXT);
        assertThat(bank(spoilt).findings()).contains(FILE + finding);
        if (form) {
            assertThat(Schemas.violations("topic", spoilt)).isNotEmpty();
        }
    }

    @Test
    void theSchemaKnowsIt() {
        assertThat(Schemas.violations("topic", TEXT)).isEmpty();
        String apply = TEXT.replace("level: judge", "level: apply");
        assertThat(Schemas.violations("topic", apply)).isNotEmpty();
    }

    private SmallBank bank(String text) {
        return SmallBank.copiedTo(folder).write(FILE, text);
    }
}
