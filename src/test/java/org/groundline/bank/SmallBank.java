package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.file.Finding;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/// A copy of the small sound bank among the test resources, to be spoilt by a test.
public record SmallBank(Path folder) {
    public static final Path SOUND =
            Path.of(System.getProperty("groundline.base", "."), "src/test/resources/bank/sound");
    static final String FIXED = "EQU/EQU-1-harness.yaml";
    static final String NUMERIC = "AER/AER-2-glide.yaml";

    public static SmallBank copiedTo(Path folder) {
        try (Stream<Path> files = Files.walk(SOUND)) {
            for (Path file : files.toList()) {
                Path copy = folder.resolve(SOUND.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(file, copy);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new SmallBank(folder);
    }

    /// Replaces the first place of a text that must be there.
    public SmallBank replace(String file, String old, String text) {
        String before = read(file);
        assertThat(before).contains(old);
        int at = before.indexOf(old);
        return write(file, before.substring(0, at) + text + before.substring(at + old.length()));
    }

    public SmallBank write(String file, String text) {
        return write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    SmallBank write(String file, byte[] bytes) {
        try {
            Path path = folder.resolve(file);
            Files.createDirectories(path.resolveSibling(""));
            Files.write(path, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    SmallBank remove(String file) {
        try {
            Files.delete(folder.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    String read(String file) {
        try {
            return Files.readString(folder.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<String> findings() {
        return Questions.check(folder).findings().stream().map(Finding::text).toList();
    }

    Questions load() {
        return Questions.load(folder);
    }
}
