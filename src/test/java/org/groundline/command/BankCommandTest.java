package org.groundline.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import org.groundline.bank.SmallBank;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import picocli.CommandLine;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

class BankCommandTest {
    private static final String SOUND = SmallBank.SOUND.toString();
    private static final String GIVEN = "airspeed=40 km/h,glide_ratio=8,wind=10 km/h,height=400 m";

    @TempDir private Path folder;

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

    private static JsonNode json(Run run) throws Exception {
        return new ObjectMapper().readTree(run.out());
    }

    private String spoilt() {
        return SmallBank.copiedTo(folder)
                .replace("EQU/EQU-1-harness.yaml", "level: recall", "level: easy")
                .folder()
                .toString();
    }

    @Test
    void checkTellsWhatIsInASoundBank() {
        String modules = "EQU: 2 fixed, 0 numeric\nAER: 0 fixed, 1 numeric\n";
        String sum =
                "2 fixed and 1 numeric questions, 6 misconceptions, 2 briefs; 0 errors, 0 warnings\n";
        assertThat(run("check", "--bank", SOUND)).isEqualTo(new Run(0, modules + sum, ""));
    }

    @Test
    void checkTellsPeopleOfErrorsOnStandardError() {
        Run run = run("check", "--bank", spoilt());
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err())
                .isEqualTo(
                        "EQU/EQU-1-harness.yaml:5: error: question leg-straps-open-at-launch has"
                                + " the unknown level 'easy'; write one of recall, apply, judge"
                                + " (value)\n");
        assertThat(run.out()).endsWith("6 misconceptions, 2 briefs; 1 errors, 0 warnings\n");
    }

    @Test
    void checkTellsProgramsInJson() throws Exception {
        Run run = run("check", "--bank", spoilt(), "--format", "json");
        assertThat(run.exit()).isEqualTo(1);
        assertThat(json(run))
                .isEqualTo(
                        new ObjectMapper()
                                .readTree(
                                        """
                                        {"fixed": 1, "numeric": 1, "misconceptions": 6, "briefs": 2,
                                         "modules": {"EQU": {"fixed": 1, "numeric": 0},
                                                     "AER": {"fixed": 0, "numeric": 1}},
                                         "findings": [{"level": "error",
                                            "file": "EQU/EQU-1-harness.yaml", "line": 5,
                                            "rule": "value",
                                            "message": "question leg-straps-open-at-launch has the\
                                         unknown level 'easy'; write one of recall, apply, judge"}]}
                                        """));
    }

    @Test
    void withoutAFolderTheBankOfTheProgramIsMeant() throws Exception {
        Run run = run("check", "--format", "json");
        assertThat(json(run).path("modules").fieldNames())
                .toIterable()
                .containsExactly("EQU", "AER", "MET", "SAF", "LAW", "FLY", "HUM", "DAY");
    }

    /// 400 m of height, 8 to 1, 30 of 40 km/h left over ground: 400 × 8 × 30 / 40 = 2400 m.
    @Test
    void evaluateComputesAnAnswerForGivenValues() throws Exception {
        Run run =
                run(
                        "evaluate",
                        "glide-distance-in-wind",
                        "--bank",
                        SOUND,
                        "--given",
                        GIVEN,
                        "--format",
                        "json");
        assertThat(run.exit()).isZero();
        assertThat(json(run).path("answer").decimalValue()).isEqualByComparingTo("2400");
        assertThat(json(run).path("unit").asText()).isEqualTo("m");
        assertThat(json(run).path("steps")).hasSize(3);
        assertThat(json(run).path("steps").get(0).asText())
                .isEqualTo("Ground speed is airspeed minus headwind: 30\u202fkm/h.");
    }

    @Test
    void evaluateWritesForPeople() {
        Run run = run("evaluate", "glide-distance-in-wind", "--bank", SOUND, "--given", GIVEN);
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("printed: 2400 m\n");
    }

    @Test
    void evaluateRefusesAMissingValue() {
        Run run = run("evaluate", "glide-distance-in-wind", "--bank", SOUND, "--given", "wind=5 m");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isNotEmpty();
    }

    @Test
    void evaluateRefusesAFixedQuestion() {
        Run run = run("evaluate", "lowest-sink-rate", "--bank", SOUND, "--given", "wind=5 m");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).startsWith("'lowest-sink-rate' is a fixed question");
    }

    @Test
    void anUnknownQuestionIsAWrongCall() {
        Run run = run("sample", "no-such-question", "--bank", SOUND);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).startsWith("There is no question 'no-such-question' in the bank.\n");
    }

    @Test
    void aBrokenBankCannotBeSampled() {
        Run run = run("sample", "lowest-sink-rate", "--bank", spoilt());
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("EQU/EQU-1-harness.yaml:5: error: ");
    }

    @Test
    void sampleShowsAQuestionWithItsKey() {
        assertThat(run("sample", "lowest-sink-rate", "--bank", SOUND, "--seed", "5").out())
                .isEqualTo(
                        """
                        seed 5: Which of these sink rates is the lowest one?
                          A  1.2 m/s
                          B  3.5 m/s
                          C  10 m/s
                          key: A
                          mistake: B, this trusts the seat to hold the pilot
                          mistake: C, this takes the leg straps for a comfort
                        """);
    }

    @Test
    void sampleShowsADecisionWithItsSolution() throws Exception {
        String out = run("sample", "does-it-reach-the-field", "--bank", deciding()).out();
        assertThat(out)
                .contains("  A  No, you come down short of the field.")
                .contains("  step: The glide takes distance divided by glide ratio: ")
                .contains("  step: The result is ")
                .contains("  mistake: ");
    }

    @Test
    void sampleShowsANumberAsAChoice() {
        String id = "glide-distance-in-wind";
        Run run = run("sample", id, "--bank", SOUND, "--seed", "5", "--form", "choice");
        assertThat(run.out())
                .containsPattern(
                        "  A  \\d+\u202Fm\\R  B  \\d+\u202Fm\\R  C  \\d+\u202Fm\\R  key: A")
                .contains("  mistake: B, this leaves the wind out")
                .contains("  mistake: C, this adds the headwind");
        assertThat(run("sample", id, "--bank", SOUND, "--form", "spoken").exit()).isEqualTo(2);
    }

    @Test
    void sampleSaysWhereThereIsNoChoice() {
        SmallBank bank =
                SmallBank.copiedTo(folder)
                        .replace(
                                "AER/AER-2-glide.yaml",
                                "      - misconception: wind-added\n"
                                        + "        formula: height * glide_ratio * (airspeed + wind)"
                                        + " / airspeed\n",
                                "");
        String at = bank.folder().toString();
        Run run = run("sample", "glide-distance-in-wind", "--form", "choice", "--bank", at);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains(
                        "seed 1: no choice, as fewer than two mistakes are apart for these values");
    }

    @Test
    void evaluateTellsTheDecisionForGivenValues() throws Exception {
        String given = "glide_ratio=8,height=300 m,distance=2 km,reserve=80 m";
        String id = "does-it-reach-the-field";
        assertThat(run("evaluate", id, "--bank", deciding(), "--given", given).out())
                .contains("answer: 50 m")
                .contains("decision: Yes, but with less than 80\u202Fm left.");
    }

    private String deciding() throws Exception {
        Path reach = SmallBank.SOUND.resolveSibling("decide/AER-2-reach.yaml");
        return SmallBank.copiedTo(folder)
                .write("AER/AER-2-reach.yaml", Files.readString(reach))
                .folder()
                .toString();
    }

    @Test
    void sampleShowsAsManyAsAskedFor() throws Exception {
        Run run =
                run(
                        "sample",
                        "glide-distance-in-wind",
                        "--bank",
                        SOUND,
                        "--count",
                        "3",
                        "--seed",
                        "9",
                        "--format",
                        "json");
        assertThat(json(run)).hasSize(3);
        assertThat(json(run).get(2).path("seed").asLong()).isEqualTo(11);
        assertThat(json(run).get(0).path("shown").path("kind").asText()).isEqualTo("number");
        assertThat(json(run).get(0).path("key").path("mistakes")).hasSize(9);
    }

    @Test
    void aLongSampleIsTheSameArrayAsItsShortOnesTogether() throws Exception {
        String[] first = {
            "sample", "lowest-sink-rate", "--bank", SOUND, "--format", "json", "--seed", "1"
        };
        Run one = run(first);
        Run two =
                run(
                        "sample",
                        "lowest-sink-rate",
                        "--bank",
                        SOUND,
                        "--format",
                        "json",
                        "--seed",
                        "2");
        String[] both = Arrays.copyOf(first, first.length + 2);
        both[first.length] = "--count";
        both[first.length + 1] = "2";
        String elements = one.out().substring(0, one.out().length() - " ]\n".length());
        assertThat(run(both).out()).isEqualTo(elements + ", " + two.out().substring("[ ".length()));
        assertThat(one.out()).startsWith("[ {\n  \"id\" : \"lowest-sink-rate\",").endsWith("} ]\n");
    }

    /// In a process of its own, as only the system's pipe is broken in the system's way.
    @Test
    void aSampleThatNobodyReadsAnyMoreEndsQuietlyAndEarly() throws Exception {
        Path err = folder.resolve("err.txt");
        Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                "org.groundline.Main",
                                "bank",
                                "sample",
                                "lowest-sink-rate",
                                "--bank",
                                SOUND,
                                "--count",
                                "2000000000")
                        .redirectError(err.toFile())
                        .start();
        try (BufferedReader reader = process.inputReader()) {
            assertThat(reader.readLine()).startsWith("seed 1: ");
        }
        boolean ended = process.waitFor(60, TimeUnit.SECONDS);
        process.destroyForcibly();
        assertThat(ended).isTrue();
        assertThat(process.exitValue()).isEqualTo(1);
        assertThat(err).isEmptyFile();
    }

    @Test
    void anOutputThatCannotBeWrittenEndsTheSampleAndIsTold() {
        for (String format : List.of("text", "json")) {
            StringWriter err = new StringWriter();
            int exit =
                    new CommandLine(new BankCommand())
                            .setOut(new PrintWriter(new FullDisk()))
                            .setErr(new PrintWriter(err))
                            .execute(
                                    "sample",
                                    "lowest-sink-rate",
                                    "--bank",
                                    SOUND,
                                    "--count",
                                    "2000000000",
                                    "--format",
                                    format);
            assertThat(exit).isEqualTo(1);
            assertThat(err.toString())
                    .isEqualTo(
                            "The output could not be written to its end: it is closed or full\n");
        }
    }

    private static final class FullDisk extends Writer {
        @Override
        public void write(char[] text, int from, int length) throws IOException {
            throw new IOException("No space left on device");
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }

    @Test
    void progressIsToldOnStandardErrorWhereAskedFor() {
        Run run = run("sample", "lowest-sink-rate", "--bank", SOUND, "--count", "3", "--progress");
        assertThat(run.err()).isEqualTo("3 of 3\n");
        assertThat(run.out()).startsWith("seed 1: ");
    }

    @Test
    void fewerThanOneSampleIsAWrongCall() {
        Run run = run("sample", "lowest-sink-rate", "--bank", SOUND, "--count", "0");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).startsWith("--count is 0; ask for at least one\n");
    }

    @Test
    void anUnknownFormatIsAWrongCall() {
        Run run = run("check", "--bank", SOUND, "--format", "xml");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("'xml' is not text or json");
    }

    @Test
    void helpIsNoFailure() {
        assertThat(run("--help").exit()).isZero();
        assertThat(run("sample", "-h").out()).contains("--count", "--seed", "--bank");
    }

    @Test
    void withoutACommandTheUsageIsShown() {
        Run run = run();
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("check", "evaluate", "sample", "Exit codes:");
    }
}
