package org.groundline.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;

import org.groundline.bank.SmallBank;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import picocli.CommandLine;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;

/// `bank sheet` on a copy of the small bank, into a language that it does not have yet.
class BankSheetCommandTest {
    private static final String TITLE = "fr,module,EQU,title,Equipment,";

    @TempDir private Path folder;
    private Path bank = Path.of("");
    private Path sheet = Path.of("");

    private record Run(int exit, String out, String err) {}

    private static Run run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit =
                new CommandLine(new BankCommand())
                        .setOut(new PrintWriter(out))
                        .setErr(new PrintWriter(err))
                        .execute(arguments);
        return new Run(exit, out.toString(), err.toString());
    }

    @BeforeEach
    void copy() throws IOException {
        bank = SmallBank.copiedTo(Files.createDirectory(folder.resolve("bank"))).folder();
        sheet = folder.resolve("equ.csv");
    }

    private Run export(String language, String module) {
        return run(
                "sheet",
                "--bank",
                bank.toString(),
                "--language",
                language,
                "--module",
                module,
                "--output",
                sheet.toString());
    }

    private Run take(String... more) {
        String[] command = {"sheet", "--bank", bank.toString(), "--take", sheet.toString()};
        return run(Stream.of(command, more).flatMap(Arrays::stream).toArray(String[]::new));
    }

    private void fill(String text) throws IOException {
        String empty = Files.readString(sheet);
        assertThat(empty).contains(TITLE);
        Files.writeString(sheet, empty.replace(TITLE, TITLE + text));
    }

    @Test
    void aSheetIsWrittenFilledAndTakenBack() throws IOException {
        assertThat(export("fr", "EQU")).isEqualTo(new Run(0, "", ""));
        fill("Équipement");

        assertThat(take())
                .isEqualTo(
                        new Run(
                                0,
                                "fr/syllabus.yaml: written\n"
                                        + "fr: 1 current, 0 stale, 6 missing; 1 files changed\n",
                                ""));
        assertThat(bank.resolve("fr/syllabus.yaml")).content().contains("title: Équipement");
        assertThat(take().out()).isEqualTo("fr: 1 current, 0 stale, 6 missing; 0 files changed\n");
    }

    @Test
    void withoutAFileTheSheetGoesToStandardOutput() {
        Run run = run("sheet", "--bank", bank.toString(), "--language", "fr", "--module", "EQU");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("language,kind,id,part,").contains("\r\n" + TITLE);
    }

    @Test
    void programsAreToldInJsonWhatWasTaken() throws IOException {
        export("fr", "EQU");
        fill("Équipement");

        assertThat(new ObjectMapper().readTree(take("--format", "json").out()))
                .isEqualTo(
                        new ObjectMapper()
                                .readTree(
                                        """
                                        {"language": "fr", "states": {"current": 1, "missing": 6, "stale": 0},
                                         "files": {"fr/syllabus.yaml": "written"}}
                                        """));
    }

    @Test
    void aWrongSheetIsRefusedWithItsRowAndNothingIsWritten() throws IOException {
        export("fr", "EQU");
        fill("É");

        Run run = take();

        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err())
                .isEqualTo(
                        "equ.csv:2: error: row 2: module EQU, title, has 1 characters in 'title';"
                                + " write 2 to 120 characters (length)\n");
        assertThat(bank.resolve("fr")).doesNotExist();
    }

    @Test
    void aWrongCallIsToldWithTheUsage() {
        assertThat(export("fr", "XYZ").err()).contains("The course has no module 'XYZ'.");
        assertThat(export("xx", "EQU").exit()).isEqualTo(2);
        assertThat(take().err()).contains("there is no file").contains("Usage:");
        assertThat(run("sheet", "--take", sheet.toString()).err())
                .contains("--take writes into the bank; say with --bank which folder");
        assertThat(run("sheet", "--bank", bank.toString()).exit()).isEqualTo(2);
    }
}
