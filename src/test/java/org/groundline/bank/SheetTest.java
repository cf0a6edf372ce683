package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.groundline.bank.GermanBank.IDEAS;
import static org.groundline.bank.GermanBank.QUESTIONS;

import org.groundline.bank.translation.State;
import org.groundline.bank.translation.TakenSheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/// The bilingual sheet, out and in again.
class SheetTest {
    private static final String LOWEST = "lowest-sink-rate";

    @TempDir private Path folder;
    private GermanBank german = new GermanBank(new SmallBank(Path.of("")));

    @BeforeEach
    void confirm() {
        german = GermanBank.copiedTo(folder).confirmed();
    }

    private TakenSheet taken(String sheet) {
        return german.bank().load().translations().take(sheet, "sheet.csv");
    }

    private void refuses(String sheet, String finding) {
        assertThatThrownBy(() -> taken(sheet))
                .isInstanceOfSatisfying(
                        BankFault.class,
                        fault ->
                                assertThat(fault.findings())
                                        .extracting(f -> f.text())
                                        .contains(finding));
    }

    @Test
    void aSheetHasARowForEachTextWithItsEnglishBesideIt() {
        String version = german.bank().load().question(LOWEST).version();
        assertThat(german.sheet())
                .startsWith(
                        "language,kind,id,part,source,translation,state,follows,version\r\n"
                                + "de,module,EQU,title,")
                .contains(
                        "de,question,%s,option B,1.2 m/s,\"1,2 m/s\",current,%s,%s\r\n"
                                .formatted(LOWEST, version, version))
                .contains("de,topic,EQU-1,title,Harness and connections,,missing,,");
    }

    @Test
    void takenBackUnchangedItChangesNothing() {
        assertThat(taken(german.sheet()).files()).isEmpty();
    }

    @Test
    void theWholeGermanOfTheShippedBankIsWrittenAsItStands() throws Exception {
        Questions bank = Questions.load(Schemas.BANK);
        String sheet = bank.translations().sheet("de", "HUM");
        assertThat(bank.translations().take(sheet, "sheet.csv").files()).isEmpty();
        Path empty = folder.resolve("english");
        SmallBank english = TestBanks.withoutLanguages(Schemas.BANK, empty);
        Map<String, Optional<String>> files =
                english.load().translations().take(sheet, "sheet.csv").files();
        assertThat(files).hasSizeGreaterThanOrEqualTo(5);
        files.forEach(
                (file, text) ->
                        assertThat(text)
                                .as(file)
                                .contains(Schemas.text(Schemas.BANK.resolve(file))));
    }

    @Test
    void aTextThatIsNewIsWrittenAndFollowsTheEnglish() {
        german.take(german.sheet().replace("10 m/s,10 m/s", "10 m/s,\"10,0 m/s\""));
        assertThat(german.bank().read(QUESTIONS)).contains("- 10,0 m/s");
        assertThat(german.bank().findings()).isEmpty();
    }

    @Test
    void whatIsStillStaleKeepsWhatItFollows() {
        String before = german.bank().load().question(LOWEST).version();
        german.bank().replace(SmallBank.FIXED, "is the lowest one?", "is the lowest of all?");
        TakenSheet same = taken(german.sheet());
        german.take(german.sheet().replace("ist die kleinste?", "ist die allerkleinste?"));
        assertThat(same.files()).isEmpty();
        assertThat(same.states()).containsEntry(State.STALE, 1);
        assertThat(german.bank().read(QUESTIONS)).contains("allerkleinste", "follows: " + before);
        assertThat(german.bank().findings()).hasSize(1).first().asString().contains("stem");
    }

    @Test
    void writingCurrentOverStaleConfirmsIt() {
        german.bank().replace(SmallBank.FIXED, "is the lowest one?", "is the lowest of all?");
        german.confirmed();
        assertThat(german.bank().findings()).isEmpty();
        assertThat(german.german(LOWEST)).isPresent();
    }

    @Test
    void aSheetOfOlderEnglishIsRefusedAtItsRow() {
        String sheet = german.sheet();
        german.bank().replace(SmallBank.FIXED, "is the lowest one?", "is the lowest of all?");
        int row = sheet.substring(0, sheet.indexOf(LOWEST)).split("\r\n").length;
        refuses(
                sheet,
                "sheet.csv:%d: error: row %d: question %s, stem, is of another version of the English; export a new sheet and carry your text over, looking at what changed (translation-outdated)"
                        .formatted(row, row, LOWEST));
    }

    @Test
    void whatIsWrongInASheetIsRefusedAndNothingIsTaken() {
        String sheet = german.sheet();
        int row = sheet.substring(0, sheet.indexOf(LOWEST)).split("\r\n").length;
        String at = "sheet.csv:%d: error: row %d: question %s, ".formatted(row, row, LOWEST);
        refuses(
                sheet.replace("Welche dieser Sinkraten ist die kleinste?", "Welche?"),
                at + "stem, has 7 characters in 'stem'; write 15 to 800 characters (length)");
        refuses(
                sheet.replace("Welche dieser Sinkraten ist die kleinste?", ""),
                at
                        + "stem, has no 'stem'; fill it in, or empty all rows of this question"
                        + " (missing)");
        refuses(
                sheet.replace("Which of these sink rates is", "Which sink rate is"),
                at
                        + "stem, has another English text than the bank; change the English in the"
                        + " bank, not in a sheet; export a new sheet and carry your text over,"
                        + " looking at what changed (translation-outdated)");
        refuses(
                sheet.replace("de,question," + LOWEST + ",stem", "de,question,lowest,stem"),
                "sheet.csv:%d: error: row %d: question lowest, stem, is of nothing in the bank; remove the row (translation-unknown)"
                        .formatted(row, row));
        refuses(
                sheet.replace("current", "good"),
                at
                        + "stem, has the unknown state 'good'; write one of current, stale, missing"
                        + " (value)");
        refuses(
                sheet.replace("de,question," + LOWEST + ",stem", "fr,question," + LOWEST + ",stem"),
                at
                        + "stem, is of the language 'fr', row 2 of 'de'; take each language's sheet"
                        + " by itself (value)");
    }

    @Test
    void aRowThatIsMissingOrTwiceIsRefused() {
        String sheet = german.sheet();
        String line =
                sheet.lines()
                        .filter(l -> l.contains(LOWEST + ",rationale"))
                        .findFirst()
                        .orElseThrow();
        int row = sheet.substring(0, sheet.indexOf(LOWEST)).split("\r\n").length;
        refuses(
                sheet.replace(line + "\r\n", ""),
                "sheet.csv:%d: error: row %d: question %s has no row for its rationale; leave every row of a sheet in it (missing)"
                        .formatted(row, row, LOWEST));
        int last = sheet.split("\r\n").length + 1;
        refuses(
                sheet + line + "\r\n",
                "sheet.csv:%d: error: row %d: question %s, rationale, has a part that an earlier row has; remove one of them (id-twice)"
                        .formatted(last, last, LOWEST));
    }

    @Test
    void aFileThatIsNoSheetIsRefused() {
        refuses(
                german.sheet().replace(',', ';'),
                "sheet.csv:1: error: row 1 does not name the columns of a sheet; it reads language,kind,id,part,source,translation,state,follows,version, separated by commas, not semicolons (shape)");
        refuses(
                "language,kind,id,part,source,translation,state,follows,version\r\nde,question\r\n",
                "sheet.csv:2: error: row 2 has 2 cells; a row has 9; export a new sheet and fill in its column 'translation' (shape)");
    }

    @Test
    void aSheetMayBeginWithAByteOrderMark() {
        assertThat(taken("\uFEFF" + german.sheet()).files()).isEmpty();
    }

    @Test
    void emptyingAllRowsRemovesATranslationAndAnEmptyFileWithIt() {
        String ideas = german.bank().read(IDEAS);
        String sheet = german.sheet();
        for (String text :
                ideas.lines()
                        .filter(l -> l.matches(" +(wrong|right|feedback): .*"))
                        .map(l -> l.substring(l.indexOf(": ") + 2))
                        .toList()) {
            sheet = sheet.replace("," + text + ",", ",,").replace(",\"" + text + "\",", ",,");
        }
        TakenSheet taken = taken(sheet);
        assertThat(taken.files()).containsOnlyKeys(IDEAS);
        assertThat(taken.files().get(IDEAS)).isEmpty();
        assertThat(taken.states()).containsEntry(State.MISSING, 4);
    }

    @Test
    void aCellThatASpreadsheetWouldRunIsGuardedOutAndUnguardedIn() {
        german.bank()
                .replace(SmallBank.FIXED, "text: 10 m/s", "text: \"=10 m/s\"")
                .replace(SmallBank.FIXED, "text: 3.5 m/s", "text: \"'@3.5 m/s\"");
        german.bank()
                .replace(QUESTIONS, "- 10 m/s", "- \"-10 m/s\"")
                .replace(QUESTIONS, "- 3,5 m/s", "- \"+3,5 m/s\"");
        german.confirmed();
        assertThat(german.sheet())
                .contains(",'=10 m/s,'-10 m/s,", ",''@3.5 m/s,\"'+3,5 m/s\",")
                .doesNotContainPattern(",\"?[=@+-]");
        assertThat(taken(german.sheet()).files()).isEmpty();
        assertThat(german.bank().read(QUESTIONS)).contains("-10 m/s", "+3,5 m/s");
    }

    @Test
    void anotherLanguageBeginsWithAnEmptySheet() {
        Translations translations = german.bank().load().translations();
        String sheet = translations.sheet("fr", "EQU");
        assertThat(sheet.lines().skip(1)).allMatch(line -> line.contains(",missing,,"));
        String title = "fr,module,EQU,title,Equipment,";
        german.take(sheet.replace(title, title + "Équipement"));
        assertThat(german.bank().read("fr/syllabus.yaml"))
                .startsWith("# yaml-language-server: $schema=../schema/translated-syllabus")
                .contains("title: Équipement");
    }
}
