package org.groundline.bank;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;

import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/// A way to spoil the small bank, and what the check then says; kept in `broken.yaml`.
///
/// @param form whether the JSON Schemas must refuse it too
record Broken(
        String name,
        @Nullable String file,
        String old,
        @JsonProperty("new") String text,
        boolean form,
        List<String> findings) {
    private static final Path CASES = SmallBank.SOUND.resolveSibling("broken.yaml");

    static List<Broken> all() {
        try {
            Object cases =
                    new Load(LoadSettings.builder().build())
                            .loadFromString(Files.readString(CASES));
            return new ObjectMapper().convertValue(cases, new TypeReference<List<Broken>>() {});
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void spoil(SmallBank bank) {
        bank.replace(spoilt(), old, text);
    }

    /// The spoilt file in the bank.
    Path in(SmallBank bank) {
        return bank.folder().resolve(spoilt());
    }

    private String spoilt() {
        return file == null ? SmallBank.FIXED : file;
    }

    @Override
    public String toString() {
        return name;
    }
}
