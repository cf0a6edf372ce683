package org.groundline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.argumentSet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import org.groundline.bank.SmallBank;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import picocli.CommandLine;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/// What `bank check` says of a file that is careless, broken or hostile and lies in a sound bank:
/// the file, the line and the remedy, in text and in JSON, while all else is counted as before.
class BadInputTest {
    private static final String BAD = "AER/AER-2-bad.yaml";
    private static final Path SOUND_FILE = SmallBank.SOUND.resolve("AER/AER-2-glide.yaml");
    private static final Path REACH_FILE =
            SmallBank.SOUND.resolveSibling("decide/AER-2-reach.yaml");
    private static final String FORMULA =
            "formula: height * glide_ratio * (airspeed - wind) / airspeed";

    @TempDir private Path folder;

    private record Run(int exit, String out, List<String> err) {}

    private Run check(String format) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit =
                new CommandLine(new BankCommand())
                        .setOut(new PrintWriter(out))
                        .setErr(new PrintWriter(err))
                        .execute("check", "--bank", folder.toString(), "--format", format);
        return new Run(exit, out.toString(), err.toString().lines().toList());
    }

    static Stream<Arguments> templates() {
        return Stream.of(
                argumentSet(
                        "an unknown unit",
                        "wind: {from: 10, to: 20, step: 5, unit: km/h}",
                        "wind: {from: 10, to: 20, step: 5, unit: furlong}",
                        List.of(
                                ":14: error: template another-glide at draw, wind, unit: “furlong”"
                                        + " is no unit known here; use one of % m …, or leave it out for a plain number (template)")),
                argumentSet(
                        "an unknown function",
                        FORMULA,
                        "formula: glide(height)",
                        List.of(
                                ":18: error: template another-glide at answer, formula: there is no"
                                        + " function `glide`; use one of abs, … (template)")),
                argumentSet(
                        "circular draws",
                        "height: {from: 400, to: 800, step: 50, unit: m}",
                        "height: {formula: airspeed * time, round: 50, unit: m}\n"
                                + "      time: {formula: height / wind, round: 1, unit: s}",
                        List.of(
                                ":15: error: template another-glide at draw, height, formula: it is"
                                        + " computed in a circle: height needs time needs height;"
                                        + " draw one of them from a range or a list (template)")),
                argumentSet(
                        "a sum of two dimensions",
                        FORMULA,
                        "formula: 2 * (height * glide_ratio + wind)",
                        List.of(
                                ":18: error: template another-glide at answer, formula: `height *"
                                        + " glide_ratio + wind` adds a length (m) and a speed"
                                        + " (m/s); make both the same kind of quantity"
                                        + " (template)")),
                argumentSet(
                        "a formula of another dimension than its unit",
                        FORMULA,
                        "formula: height / wind",
                        List.of(
                                ":18: error: template another-glide at answer, formula: `height /"
                                        + " wind` is a time (s), but m is a length (m); change the"
                                        + " formula or the unit (template)")),
                argumentSet(
                        "an impossible condition",
                        "where: wind < 0.6 * airspeed",
                        "where: wind > airspeed",
                        List.of(
                                ":16: error: template another-glide at where: it rejects 1215 of"
                                        + " 1215 combinations; draw from narrower ranges, so that"
                                        + " at most half are rejected (template)",
                                ":11: error: template another-glide at draw: there are only 0"
                                        + " different questions; draw more values; at least 50 are"
                                        + " needed (template)")),
                argumentSet(
                        "a draw space of 10^10 cases",
                        "airspeed: {from: 34, to: 42, step: 1, unit: km/h}\n"
                                + "      glide_ratio: {from: 7, to: 9, step: 0.5}\n"
                                + "      wind: {from: 10, to: 20, step: 5,",
                        "airspeed: {from: 34, to: 42, step: 0.01, unit: km/h}\n"
                                + "      glide_ratio: {from: 7, to: 9, step: 0.0005}\n"
                                + "      wind: {from: 10, to: 20, step: 0.01,",
                        List.of(
                                ":11: error: template another-glide at draw: there are more than"
                                        + " 10000000 combinations; draw fewer values or in wider"
                                        + " steps (template)")),
                argumentSet(
                        "a formula in 10 000 brackets",
                        FORMULA,
                        "formula: " + "(".repeat(10_000) + "height" + ")".repeat(10_000),
                        List.of(
                                ":18: error: template another-glide at answer, formula: the formula"
                                        + " has 20006 characters; use at most 500; name parts of it"
                                        + " as steps (template)")));
    }

    /// The other template of the same file stands, too.
    @ParameterizedTest
    @MethodSource("templates")
    void aBadTemplateIsToldAndAllOthersStand(String old, String text, List<String> findings)
            throws IOException {
        String spoilt = another().replace(old, text);
        assertThat(spoilt).isNotEqualTo(another());
        String reach = Files.readString(REACH_FILE);
        write(spoilt + reach.substring(reach.indexOf("  - id:")));
        assertTold(findings, 2);
    }

    static Stream<Arguments> files() throws IOException {
        String sound = another();
        return Stream.of(
                argumentSet(
                        "lists nested 10 000 deep",
                        bytes("topic: " + "[".repeat(10_000)),
                        ":1: error: lists and mappings are nested more than 20 deep; no part of a"
                                + " bank file needs that; check the brackets (nesting)"),
                argumentSet(
                        "a list in a list in a list, 10 000 deep in one line",
                        bytes("topic:\n  " + "- ".repeat(10_000) + "a"),
                        ":2: error: lists and mappings are nested more than 20 deep; no part of a"
                                + " bank file needs that; check the brackets (nesting)"),
                argumentSet(
                        "more than 1 MB",
                        bytes(sound + "#".repeat(1_000_000)),
                        ":1: error: the file has more than 1 MB; split it into smaller files of the"
                                + " same topic (file-too-large)"),
                argumentSet(
                        "just under 1 MB of one text",
                        bytes(sound.replace("large flat", "*large* ".repeat(120_000))),
                        ":7: error: template another-glide has 960205 characters in 'stem'; write"
                                + " 15 to 800 characters (length)"),
                argumentSet(
                        "a tag",
                        bytes(sound.replace("topic: AER-2", "topic: !!java.io.File AER-2")),
                        ":1: error: a tag (!) is not allowed in a bank file; remove it, or put"
                                + " quotes around the text (yaml-feature)"),
                argumentSet(
                        "anchors and aliases that would grow without end",
                        bytes("a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\ntopic: *c\n"),
                        ":1: error: an anchor (&) is not allowed in a bank file; remove it and"
                                + " write texts out where needed (yaml-feature)"),
                argumentSet(
                        "an alias of nothing",
                        bytes(sound.replace("audience: core", "audience: *core")),
                        ":6: error: an alias (*) is not allowed in a bank file; write the text out"
                                + " again (yaml-feature)"),
                argumentSet(
                        "Latin-1",
                        sound.replace("straight", "stra\u00EFght")
                                .getBytes(StandardCharsets.ISO_8859_1),
                        ":8: error: the file is not UTF-8 text; save it in the encoding UTF-8"
                                + " (file-unreadable)"),
                argumentSet(
                        "UTF-16",
                        sound.getBytes(StandardCharsets.UTF_16),
                        ":1: error: the file is not UTF-8 text; save it in the encoding UTF-8"
                                + " (file-unreadable)"),
                argumentSet(
                        "a NUL",
                        bytes(sound.replace("large flat", "large\0flat")),
                        ":9: error: the file contains the invisible character U+0000; remove it and"
                                + " type the text again (character)"),
                argumentSet(
                        "a byte order mark in the middle",
                        bytes(sound.replace("where: wind", "where: \uFEFFwind")),
                        ":16: error: the text contains the invisible character U+FEFF; remove it"
                                + " and type the text again (character)"),
                argumentSet(
                        "nothing",
                        bytes(""),
                        ":1: error: the file is empty; fill it or remove it (shape)"));
    }

    @ParameterizedTest
    @MethodSource("files")
    void aBadFileIsToldAndAllOthersStand(byte[] file, String finding) throws IOException {
        write(file);
        assertTold(List.of(finding), 1);
    }

    @Test
    void twoEqualOptionsAreTold() throws IOException {
        String reach = Files.readString(REACH_FILE);
        write(reach.replace("Yes, with {reserve} or more", "Yes, but *with less than* {reserve}"));
        assertTold(
                List.of(
                        ":26: error: template does-it-reach-the-field, option 3 says the same as"
                                + " option 2; let each option say something else (options-equal)"),
                1);
    }

    /// Some editors begin each file with it.
    @Test
    void aByteOrderMarkAtTheBeginningDoesNoHarm() throws IOException {
        write("\uFEFF" + another());
        assertThat(check("text")).isEqualTo(new Run(0, counted(2, 0, 0), List.of()));
    }

    @Test
    void aFolderNamedLikeATopicFileIsToldOf() throws IOException {
        SmallBank.copiedTo(folder);
        Files.createDirectory(folder.resolve(BAD));
        String finding =
                ":1: warning: the folder is not part of the bank and was not read; put topic files"
                        + " right into the folder of their module (file-not-read)";
        assertThat(check("text")).isEqualTo(new Run(0, counted(1, 0, 1), List.of(BAD + finding)));
    }

    @Test
    void aFolderNamedLikeAListIsRefused() throws IOException {
        SmallBank.copiedTo(folder);
        Path sources = folder.resolve("sources.yaml");
        Files.delete(sources);
        Files.createDirectory(sources);
        String finding =
                "sources.yaml:1: error: this is a folder; rename it and put a file of this name in"
                        + " its place (file-unreadable)";
        assertThat(check("text")).isEqualTo(new Run(1, counted(1, 1, 0), List.of(finding)));
    }

    private static String another() throws IOException {
        return Files.readString(SOUND_FILE).replace("glide-distance-in-wind", "another-glide");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private void write(String text) throws IOException {
        write(bytes(text));
    }

    private void write(byte[] file) throws IOException {
        SmallBank.copiedTo(folder);
        Files.write(folder.resolve(BAD), file);
    }

    private static String counted(int numeric, int errors, int warnings) {
        return """
               EQU: 2 fixed, 0 numeric
               AER: 0 fixed, %1$d numeric
               2 fixed and %1$d numeric questions, 6 misconceptions, 2 briefs; %2$d errors, %3$d warnings
               """
                .formatted(numeric, errors, warnings);
    }

    /// @param findings without the file's name; what follows `…` is a list that may grow
    private void assertTold(List<String> findings, int numeric) throws IOException {
        Run text = check("text");
        assertThat(text.exit()).isEqualTo(1);
        assertThat(text.out()).isEqualTo(counted(numeric, findings.size(), 0));
        assertFindings(text.err(), findings);
        Run json = check("json");
        assertThat(json.exit()).isEqualTo(1);
        assertThat(json.err()).isEmpty();
        assertJson(new ObjectMapper().readTree(json.out()), findings, numeric);
    }

    private static void assertFindings(List<String> told, List<String> findings) {
        assertThat(told).hasSameSizeAs(findings);
        for (int i = 0; i < findings.size(); i++) {
            String[] parts = findings.get(i).split("…", -1);
            assertThat(told.get(i)).startsWith(BAD + parts[0]);
            if (parts.length == 1) {
                assertThat(told.get(i)).isEqualTo(BAD + findings.get(i));
            } else {
                assertThat(told.get(i)).endsWith(parts[1]).hasSizeGreaterThan(200);
            }
        }
    }

    private static void assertJson(JsonNode report, List<String> findings, int numeric) {
        assertThat(report.path("fixed").asInt()).isEqualTo(2);
        assertThat(report.path("numeric").asInt()).isEqualTo(numeric);
        assertThat(report.path("misconceptions").asInt()).isEqualTo(6);
        assertThat(report.path("modules").path("EQU").path("fixed").asInt()).isEqualTo(2);
        assertThat(report.path("modules").path("AER").path("numeric").asInt()).isEqualTo(numeric);
        List<String> told = new ArrayList<>();
        for (JsonNode finding : report.path("findings")) {
            assertThat(finding.path("level").asText()).isEqualTo("error");
            told.add(
                    "%s:%d: error: %s (%s)"
                            .formatted(
                                    finding.path("file").asText(),
                                    finding.path("line").asInt(),
                                    finding.path("message").asText(),
                                    finding.path("rule").asText()));
        }
        assertFindings(told, findings);
    }
}
