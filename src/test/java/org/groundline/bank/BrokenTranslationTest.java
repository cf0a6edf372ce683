package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.bank.GermanBank.IDEAS;
import static org.groundline.bank.GermanBank.QUESTIONS;
import static org.groundline.bank.GermanBank.SYLLABUS;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

import java.nio.file.Path;
import java.util.List;

/// What can be wrong with a translation, as a translator reads it.
class BrokenTranslationTest {
    /// A way to spoil the German of the small bank.
    ///
    /// @param form whether the JSON Schema must refuse it too
    record Spoilt(String file, String old, String text, boolean form, String finding) {}

    static final List<Spoilt> SPOILT =
            List.of(
                    new Spoilt(
                            QUESTIONS,
                            "id: lowest-sink-rate",
                            "id: lowest-sink-rates",
                            false,
                            ":12: error: question lowest-sink-rates is of no question of the bank;"
                                    + " did you mean 'lowest-sink-rate'? (translation-unknown)"),
                    new Spoilt(
                            QUESTIONS,
                            "id: lowest-sink-rate",
                            "id: glide-distance-in-wind",
                            false,
                            ":12: error: question glide-distance-in-wind has numbers or a drawing,"
                                    + " whose words stay in English; remove it"
                                    + " (translation-unknown)"),
                    new Spoilt(
                            QUESTIONS,
                            "id: lowest-sink-rate",
                            "id: leg-straps-open-at-launch",
                            false,
                            ":12: error: question leg-straps-open-at-launch is translated twice;"
                                    + " line 3 has it already, remove one of the two (id-twice)"),
                    new Spoilt(
                            QUESTIONS,
                            "      - 10 m/s\n",
                            "",
                            true,
                            ":14: error: question lowest-sink-rate has 2 options; give it 3, in the"
                                    + " order of the English (option-count)"),
                    new Spoilt(
                            QUESTIONS,
                            "- 10 m/s",
                            "- 1,2 m/s",
                            false,
                            ":17: error: question lowest-sink-rate, option 3 says the same as"
                                    + " option 2; let each option say something else"
                                    + " (options-equal)"),
                    new Spoilt(
                            QUESTIONS,
                            "stem: Welche dieser Sinkraten ist die kleinste?",
                            "stem: Sinkrate?",
                            true,
                            ":13: error: question lowest-sink-rate has 9 characters in 'stem';"
                                    + " write 15 to 800 characters (length)"),
                    new Spoilt(
                            QUESTIONS,
                            "*offenen*",
                            "`offenen`",
                            false,
                            ":4: error: question leg-straps-open-at-launch has Markdown of the kind"
                                    + " Code in 'stem'; only *emphasis* and **strong emphasis** are"
                                    + " shown everywhere, write it plainly (markdown)"),
                    new Spoilt(
                            QUESTIONS,
                            "    stem: Welche",
                            "    level: recall\n    stem: Welche",
                            true,
                            ":13: error: question lowest-sink-rate has the unknown key 'level'; the"
                                    + " known keys are id, follows, seen, stem, options, rationale"
                                    + " (unknown-key)"),
                    new Spoilt(
                            QUESTIONS,
                            "    stem: Welche",
                            "    follows: 12\n    stem: Welche",
                            true,
                            ":13: error: question lowest-sink-rate has a 'follows' that is none;"
                                    + " leave both 'follows' and 'seen' out and let `bank sheet`"
                                    + " write them (value)"),
                    new Spoilt(
                            QUESTIONS,
                            "topic: EQU-1",
                            "topic: EQU-2",
                            false,
                            ":1: error: the file is of topic EQU-2, its questions are not; write"
                                    + " topic: EQU-1 (value)"),
                    new Spoilt(
                            IDEAS,
                            "id: harness-holds-by-itself",
                            "id: harness-holds",
                            false,
                            ":6: error: misconception harness-holds is of no misconception of the"
                                    + " bank; remove it or correct its id (translation-unknown)"),
                    new Spoilt(
                            SYLLABUS,
                            "title: Ausrüstung",
                            "text: Ausrüstung",
                            true,
                            ":3: error: module EQU has the unknown key 'text'; the known keys are"
                                    + " id, follows, seen, title (unknown-key)"));

    @TempDir private Path folder;
    private GermanBank german = new GermanBank(new SmallBank(Path.of("")));

    @BeforeEach
    void copy() {
        german = GermanBank.copiedTo(folder);
    }

    @ParameterizedTest(name = "{0}")
    @FieldSource("SPOILT")
    void aSpoiltTranslationIsFoundOutWithItsLineAndARemedy(Spoilt spoilt) {
        german.bank().replace(spoilt.file(), spoilt.old(), spoilt.text());
        assertThat(german.bank().findings()).contains(spoilt.file() + spoilt.finding());
    }

    @ParameterizedTest(name = "{0}")
    @FieldSource("SPOILT")
    void whatIsWrongInFormIsRefusedByTheSchemaAndNothingElse(Spoilt spoilt) {
        Path file = folder.resolve(spoilt.file());
        assertThat(Schemas.violations(file)).isEmpty();
        german.bank().replace(spoilt.file(), spoilt.old(), spoilt.text());
        assertThat(Schemas.violations(file).isEmpty()).isEqualTo(!spoilt.form());
    }

    @Test
    void aTranslationThatFollowsNothingIsPutToNobody() {
        assertThat(german.german("lowest-sink-rate")).isEmpty();
        assertThat(german.bank().findings())
                .contains(
                        QUESTIONS
                                + ":12: warning: question lowest-sink-rate does not say which"
                                + " English it follows; export its sheet with `bank sheet`, mend the"
                                + " text, and write 'current' over its state (translation-stale)");
    }

    @Test
    void aFileInAnotherPlaceThanItsEnglishIsAnError() {
        german.bank().write("de/EQU/other.yaml", german.bank().read(QUESTIONS)).remove(QUESTIONS);
        assertThat(german.bank().findings())
                .contains(
                        "de/EQU/other.yaml:3: error: question leg-straps-open-at-launch stands in"
                                + " another file than its English; move it to"
                                + " EQU/EQU-1-harness.yaml of the same language (file-place)");
    }

    @Test
    void aFolderOfNoLanguageIsAnError() {
        german.bank().write("zz/misconceptions.yaml", "misconceptions: []\n");
        german.bank().write("en/misconceptions.yaml", "misconceptions: []\n");
        assertThat(german.bank().findings())
                .contains(
                        "zz:1: error: there is no language 'zz'; name the folder by the two letters"
                                + " of its language, such as de (language-unknown)",
                        "en:1: error: the bank itself is in English; name the folder by the two"
                                + " letters of its language, such as de (language-unknown)");
    }

    @Test
    void whatNobodyReadsInALanguageIsTold() {
        german.bank().write("de/sources.yaml", "sources: []\n").write("de/EQU/notes.txt", "x");
        assertThat(german.bank().findings())
                .anyMatch(f -> f.startsWith("de/sources.yaml:1: warning: the file is not part"))
                .anyMatch(f -> f.startsWith("de/EQU/notes.txt:1: warning: the file is not part"));
    }
}
