package org.groundline.bank;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;

import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/// Holds bank files against the JSON Schemas that editors use.
final class Schemas {
    static final Path BANK = Path.of(System.getProperty("groundline.base", "."), "question-bank");

    private static final Set<String> LISTS = Set.of("syllabus", "misconceptions", "sources");
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private Schemas() {}

    /// What the schema for this kind of file has against it.
    static List<String> violations(Path file) {
        String name = String.valueOf(file.getFileName()).replace(".yaml", "");
        if (name.endsWith(".md")) {
            return violations("brief", head(text(file)));
        }
        String kind = LISTS.contains(name) ? name : "topic";
        return violations(isTranslated(file) ? "translated-" + kind : kind, text(file));
    }

    /// Languages have folders of two small letters, with modules in them.
    private static boolean isTranslated(Path file) {
        return file.toAbsolutePath().toString().matches(".*/[a-z]{2}(/[A-Z]{3})?/[^/]+");
    }

    /// What the schema of this kind has against a YAML text.
    static List<String> violations(String kind, String yaml) {
        Object value = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        String json = new ObjectMapper().valueToTree(value).toString();
        return schema(kind).validate(json, InputFormat.JSON).stream().map(Error::toString).toList();
    }

    /// The part of a brief before its text.
    private static String head(String brief) {
        return brief.split("(?m)^---$", 3)[1];
    }

    private static Schema schema(String kind) {
        return REGISTRY.getSchema(text(BANK.resolve("schema/" + kind + ".schema.json")));
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
