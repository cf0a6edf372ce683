package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.diagram.Diagram;
import org.groundline.diagram.Diagrams;
import org.groundline.formulary.Input;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// The JSON Schemas and the loader agree, so that an editor does not promise what will not load.
class SchemaTest {
    /// Without those that are no YAML, or YAML that only this loader refuses.
    static final List<Broken> BROKEN =
            Broken.all().stream()
                    .filter(b -> b.findings().stream().noneMatch(f -> isYaml(f)))
                    .toList();

    @TempDir private Path folder;

    private static boolean isYaml(String finding) {
        return finding.matches(".*\\((yaml-syntax|yaml-feature|nesting|duplicate-key)\\)")
                || finding.contains("between two lines of '---'");
    }

    @ParameterizedTest(name = "{0}")
    @FieldSource("BROKEN")
    void whatIsWrongInFormIsRefusedByTheSchemaAndNothingElse(Broken broken) {
        SmallBank bank = SmallBank.copiedTo(folder);
        broken.spoil(bank);
        List<String> violations = Schemas.violations(broken.in(bank));
        if (broken.form()) {
            assertThat(violations).isNotEmpty();
        } else {
            assertThat(violations).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void everyFileOfTheBankKeepsItsSchema(Path file) {
        assertThat(Schemas.violations(file)).isEmpty();
    }

    @Test
    void everyDrawingIsInTheSchemaAndInTheTableForAuthors() {
        List<String> table =
                Schemas.text(Schemas.BANK.resolve("README.md"))
                        .lines()
                        .filter(line -> line.startsWith("| "))
                        .toList();
        String schema = Schemas.text(Schemas.BANK.resolve("schema/topic.schema.json"));
        String brief = Schemas.text(Schemas.BANK.resolve("schema/brief.schema.json"));
        for (Diagram diagram : Diagrams.list()) {
            assertThat(schema).contains("\"" + diagram.name() + "\"");
            assertThat(brief).contains("\"" + diagram.name() + "\"");
            assertThat(table)
                    .filteredOn(row -> row.contains(diagram.name()))
                    .singleElement()
                    .satisfies(row -> assertThat(row).contains(namesIn(diagram)));
        }
    }

    private static List<String> namesIn(Diagram diagram) {
        return Stream.of(
                        diagram.inputs().stream().map(Input::name),
                        diagram.optionalInputs().stream().map(Input::name),
                        diagram.askable().stream())
                .flatMap(names -> names)
                .toList();
    }

    /// The README shows a fixed question, a template, a computed value for it, a template that
    /// decides, both lists and a translation, one after the other.
    @Test
    void theExamplesForAuthorsKeepTheSchemas() {
        List<String> examples =
                Pattern.compile("(?s)```yaml\n(.*?)```")
                        .matcher(Schemas.text(Schemas.BANK.resolve("README.md")))
                        .results()
                        .map(block -> block.group(1))
                        .toList();
        assertThat(examples).hasSize(6);
        String[] lists = examples.get(4).split("(?m)^(?=sources:)");
        assertThat(Schemas.violations("topic", examples.get(0))).isEmpty();
        assertThat(Schemas.violations("topic", "topic: AER-2\n" + examples.get(1))).isEmpty();
        String computing = examples.get(1).replaceFirst(" {6}height: .*\n", examples.get(2));
        assertThat(computing).contains("field:  {formula: ");
        assertThat(Schemas.violations("topic", "topic: AER-2\n" + computing)).isEmpty();
        assertThat(Schemas.violations("topic", "topic: AER-2\n" + examples.get(3))).isEmpty();
        assertThat(Schemas.violations("misconceptions", lists[0])).isEmpty();
        assertThat(Schemas.violations("sources", lists[1])).isEmpty();
        assertThat(Schemas.violations("translated-topic", examples.get(5))).isEmpty();
    }

    static Stream<Path> files() throws IOException {
        return Stream.concat(yaml(Schemas.BANK), yaml(SmallBank.SOUND));
    }

    private static Stream<Path> yaml(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files
                    .filter(f -> f.toString().matches(".*(\\.yaml|[A-Z]{3}-\\d+\\.md)"))
                    .toList()
                    .stream();
        }
    }
}
