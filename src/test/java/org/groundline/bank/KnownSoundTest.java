package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.groundline.bank.SmallBank.NUMERIC;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

/// What is examined again and what is not, from one start to the next.
class KnownSoundTest {
    private static final String PROGRAM = "a".repeat(64);
    private static final String NEXT_PROGRAM = "b".repeat(64);

    /// A wrong worked example: only recomputing it shows that.
    private static final String RIGHT = "answer: 2400 m";

    @TempDir private Path folder;
    private SmallBank bank = new SmallBank(Path.of(""));
    private Path data = Path.of("");

    @BeforeEach
    void copyTheBank() {
        bank = SmallBank.copiedTo(folder.resolve("bank"));
        data = folder.resolve("data");
    }

    private int examinedAtAStart() {
        return examinedAtAStart(PROGRAM);
    }

    private int examinedAtAStart(String program) {
        KnownFile known = new KnownFile(data, program);
        Questions.load(bank.folder(), known);
        return known.examined();
    }

    private Path file() {
        return data.resolve(KnownFile.NAME);
    }

    @Test
    void aTemplateIsExaminedAtTheFirstStartOnly() {
        assertThat(examinedAtAStart()).isEqualTo(1);
        assertThat(examinedAtAStart()).isZero();
    }

    @Test
    void aKnownTemplateMakesTheSameBank() {
        examinedAtAStart();
        Questions known = Questions.load(bank.folder(), new KnownFile(data, PROGRAM));
        Questions examined = bank.load();
        assertThat(known.hash()).isEqualTo(examined.hash());
        Question question = known.question("glide-distance-in-wind");
        assertThat(known.pose(question, 7)).isEqualTo(examined.pose(question, 7));
    }

    @Test
    void aTemplateThatWasSpoiltAfterwardsIsFoundOut() {
        examinedAtAStart();
        bank.replace(NUMERIC, RIGHT, "answer: 3449 m");
        assertThatThrownBy(this::examinedAtAStart)
                .isInstanceOf(BankFault.class)
                .hasMessageContaining("the example says 3449 m");
    }

    @Test
    void aSpoiltTemplateIsNeverKeptAsSound() {
        bank.replace(NUMERIC, RIGHT, "answer: 3449 m");
        assertThatThrownBy(this::examinedAtAStart).isInstanceOf(BankFault.class);
        assertThatThrownBy(this::examinedAtAStart).isInstanceOf(BankFault.class);
    }

    @Test
    void whatReadingFindsIsFoundInAKnownTemplateToo() {
        examinedAtAStart();
        bank.replace("misconceptions.yaml", "id: wind-added", "id: wind-doubled");
        assertThatThrownBy(this::examinedAtAStart)
                .isInstanceOf(BankFault.class)
                .hasMessageContaining("unknown misconception 'wind-added'");
    }

    @Test
    void anotherProgramExaminesEverythingAndIsKnownFromThenOn() {
        examinedAtAStart();
        assertThat(examinedAtAStart(NEXT_PROGRAM)).isEqualTo(1);
        assertThat(examinedAtAStart(NEXT_PROGRAM)).isZero();
        assertThat(examinedAtAStart()).isEqualTo(1);
    }

    @Test
    void aTemplateThatIsNoLongerInTheBankIsForgotten() throws IOException {
        examinedAtAStart();
        String id = "id: glide-distance-in-wind";
        List<String> before = Files.readAllLines(file());
        bank.replace(NUMERIC, id, id + "-2");
        assertThat(examinedAtAStart()).isEqualTo(1);
        assertThat(Files.readAllLines(file())).hasSameSizeAs(before).isNotEqualTo(before);
    }

    @Test
    void aDamagedFileIsNotBelievedAndIsReplaced() throws IOException {
        examinedAtAStart();
        String sound = Files.readString(file());
        for (String damaged :
                List.of(
                        "",
                        "something else",
                        "\u00C3(",
                        sound.substring(0, sound.length() - 9),
                        sound + "x\n",
                        sound.substring(KnownFile.HEAD.length() + 1))) {
            Files.writeString(file(), damaged, StandardCharsets.ISO_8859_1);
            assertThat(examinedAtAStart()).isEqualTo(1);
            assertThat(file()).hasContent(sound);
        }
    }

    @Test
    void aFolderThatCannotBeWrittenStopsNothing() throws IOException {
        Files.writeString(data, "a file where the folder should be");
        assertThat(examinedAtAStart()).isEqualTo(1);
        assertThat(examinedAtAStart()).isEqualTo(1);
        assertThat(data).hasContent("a file where the folder should be");
    }

    @Test
    void nothingIsLeftBesideTheFile() throws IOException {
        examinedAtAStart();
        examinedAtAStart(NEXT_PROGRAM);
        try (Stream<Path> files = Files.list(data)) {
            assertThat(files).containsExactly(file());
        }
    }

    @Test
    void anUnchangedBankLeavesTheFileAsItIs() throws IOException {
        examinedAtAStart();
        FileTime longAgo = FileTime.from(Instant.parse("2026-01-01T00:00:00Z"));
        Files.setLastModifiedTime(file(), longAgo);
        examinedAtAStart();
        assertThat(Files.getLastModifiedTime(file())).isEqualTo(longAgo);
    }

    @Test
    void aFullCheckKnowsNothingAndKeepsNothing() {
        KnownSound none = KnownSound.none();
        Questions.load(bank.folder(), none);
        bank.replace(NUMERIC, RIGHT, "answer: 3449 m");
        assertThatThrownBy(() -> Questions.load(bank.folder(), none)).isInstanceOf(BankFault.class);
    }

    @Test
    void aServerKnowsWhatItsLastStartFoundSound() throws IOException {
        Questions.load(bank.folder(), KnownSound.in(data));
        assertThat(Files.readAllLines(file())).hasSize(3);
        assertThat(Files.readAllLines(file()).get(1)).isEqualTo(ProgramHash.find().orElseThrow());
    }
}
