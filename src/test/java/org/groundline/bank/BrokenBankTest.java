package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.bank.SmallBank.FIXED;
import static org.groundline.bank.SmallBank.NUMERIC;

import org.groundline.bank.file.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

import java.nio.file.Path;
import java.util.List;

/// Every rule by a bank that breaks it, with the finding as an author reads it.
class BrokenBankTest {
    static final List<Broken> BROKEN = Broken.all();

    private static final String ANOTHER = "EQU/EQU-1-b.yaml";

    /// Rules about files that cannot be written down as a text, each with a test of its own here.
    private static final List<Rule> TESTED_ELSEWHERE =
            List.of(
                    Rule.FILE_MISSING,
                    Rule.FILE_UNREADABLE,
                    Rule.FILE_TOO_LARGE,
                    Rule.FILE_PLACE,
                    Rule.FILE_NOT_READ,
                    Rule.ILLUSTRATION, // IllustrationFileTest
                    Rule.ILLUSTRATION_UNKNOWN,
                    Rule.ILLUSTRATION_UNUSED,
                    Rule.LANGUAGE_UNKNOWN, // BrokenTranslationTest
                    Rule.TRANSLATION_UNKNOWN,
                    Rule.TRANSLATION_STALE,
                    Rule.TRANSLATION_LACKS_IDEA,
                    Rule.TRANSLATION_OUTDATED);

    @TempDir private Path folder;

    @ParameterizedTest(name = "{0}")
    @FieldSource("BROKEN")
    void aBrokenBankIsFoundOutWithItsLineAndARemedy(Broken broken) {
        SmallBank bank = SmallBank.copiedTo(folder);
        broken.spoil(bank);
        assertThat(bank.findings()).containsExactlyElementsOf(broken.findings());
    }

    @Test
    void everyRuleIsBrokenHereAtLeastOnce() {
        List<String> found = BROKEN.stream().flatMap(b -> b.findings().stream()).toList();
        assertThat(Rule.values())
                .allMatch(
                        rule ->
                                TESTED_ELSEWHERE.contains(rule)
                                        || found.stream()
                                                .anyMatch(
                                                        f -> f.endsWith("(" + rule.word() + ")")));
    }

    @Test
    void aFileThatIsNotUtf8IsRefusedAtItsLine() {
        var bytes = new byte[] {'a', '\n', (byte) 0xE4};
        SmallBank bank = SmallBank.copiedTo(folder).write(ANOTHER, bytes);
        finds(
                bank,
                "2: error: the file is not UTF-8 text; save it in the encoding UTF-8",
                Rule.FILE_UNREADABLE);
    }

    @Test
    void aFileOverOneMegabyteIsRefused() {
        SmallBank bank = SmallBank.copiedTo(folder).write(ANOTHER, "# ".repeat(500_001));
        finds(
                bank,
                "1: error: the file has more than 1 MB; split it into smaller files of the same"
                        + " topic",
                Rule.FILE_TOO_LARGE);
    }

    @Test
    void anEmptyFileIsRefused() {
        SmallBank bank = SmallBank.copiedTo(folder).write(ANOTHER, "# nothing yet\n");
        finds(bank, "1: error: the file is empty; fill it or remove it", Rule.SHAPE);
    }

    @Test
    void aTopicFileInTheFolderOfAnotherModuleIsRefused() {
        String text = "topic: EQU-1\nquestions: []\n";
        SmallBank bank = SmallBank.copiedTo(folder).write("AER/EQU-1-b.yaml", text);
        assertThat(bank.findings())
                .containsExactly(
                        "AER/EQU-1-b.yaml:1: error: the file is of topic EQU-1 and lies in the"
                                + " folder AER; move it to the folder EQU (file-place)");
    }

    @Test
    void aFileThatNobodyReadsIsToldOf() {
        SmallBank bank = SmallBank.copiedTo(folder).write("EQU/EQU-1-b.yml", "topic: EQU-1\n");
        assertThat(bank.findings())
                .containsExactly(
                        "EQU/EQU-1-b.yml:1: warning: the file is not part of the bank and was not"
                                + " read; name a topic file 'module/topic-name.yaml', or move it"
                                + " elsewhere (file-not-read)");
    }

    @Test
    void theSmallBankItselfIsSound() {
        assertThat(SmallBank.copiedTo(folder).findings()).isEmpty();
    }

    @Test
    void oneBrokenQuestionLeavesTheOthersStanding() {
        SmallBank bank = SmallBank.copiedTo(folder);
        bank.replace(FIXED, "level: recall", "level: easy");
        BankReport report = Questions.check(folder);
        assertThat(report.fixed()).isEqualTo(1);
        assertThat(report.numeric()).isEqualTo(1);
        assertThat(report.isSound()).isFalse();
    }

    @Test
    void oneBrokenFileLeavesTheOthersStanding() {
        SmallBank bank = SmallBank.copiedTo(folder);
        bank.replace(NUMERIC, "templates:", "templates: [");
        BankReport report = Questions.check(folder);
        assertThat(report.fixed()).isEqualTo(2);
        assertThat(report.numeric()).isZero();
        assertThat(report.errors()).hasSize(1);
    }

    @Test
    void findingsComeInTheOrderOfTheFilesAndOfTheirLinesHoweverTheyAreRead() {
        SmallBank bank = SmallBank.copiedTo(folder);
        String twice =
                """
                topic: AER-2
                questions:
                  - {id: z-1, level: recall}
                templates:
                  - {id: z-2, level: recall}
                  - {id: z-1, level: easy}
                """;
        for (int i = 10; i < 50; i++) {
            bank.write("AER/AER-2-" + i + ".yaml", twice.replace("z-2", "z-" + i));
        }
        List<String> findings = bank.findings();
        assertThat(findings)
                .filteredOn(f -> f.endsWith("(id-twice)"))
                .hasSize(79)
                .startsWith(
                        "AER/AER-2-10.yaml:6: error: template z-1 has the id of another question;"
                                + " AER/AER-2-10.yaml line 3 has it already, choose another"
                                + " (id-twice)",
                        "AER/AER-2-11.yaml:3: error: question z-1 has the id of another question;"
                                + " AER/AER-2-10.yaml line 3 has it already, choose another"
                                + " (id-twice)");
        List<String> places =
                findings.stream()
                        .map(f -> f.substring(0, "AER/AER-2-10.yaml:3".length()))
                        .distinct()
                        .toList();
        assertThat(places).isSorted().hasSize(120);
    }

    @Test
    void anUnreadableListMakesNoFindingsAboutWhatRefersToIt() {
        SmallBank bank = SmallBank.copiedTo(folder).remove("misconceptions.yaml");
        assertThat(bank.findings())
                .containsExactly(
                        "misconceptions.yaml:1: error: there is no such file; a bank has"
                                + " misconceptions.yaml at its top; check the folder's name"
                                + " (file-missing)");
    }

    private static void finds(SmallBank bank, String message, Rule rule) {
        assertThat(bank.findings())
                .containsExactly(ANOTHER + ":" + message + " (" + rule.word() + ")");
    }
}
