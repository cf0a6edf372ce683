package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;

class ProgramHashTest {
    private static final String JDK = "25.0.1+8";

    @TempDir private Path folder;
    private Path classes = Path.of("");
    private Path library = Path.of("");

    @BeforeEach
    void makeAProgram() throws IOException {
        classes = Files.createDirectories(folder.resolve("classes"));
        Files.createDirectories(classes.resolve("org"));
        Files.writeString(classes.resolve("org/Check.class"), "one");
        library = jar("library.jar", "org/Unit.class", "one", new Manifest());
    }

    private Path jar(String name, String entry, String content, Manifest manifest)
            throws IOException {
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        Path jar = folder.resolve(name);
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream out = new JarOutputStream(file, manifest)) {
            out.putNextEntry(new ZipEntry(entry));
            out.write(content.getBytes(StandardCharsets.UTF_8));
        }
        return jar;
    }

    private Optional<String> hash() {
        return ProgramHash.of(classes + File.pathSeparator + library, JDK);
    }

    @Test
    void theSameCodeHasTheSameHashWhereverItLies() throws IOException {
        String before = hash().orElseThrow();
        Path moved = folder.resolve("moved");
        Files.move(classes, moved);
        classes = moved;
        assertThat(hash()).contains(before);
        assertThat(before).matches("[0-9a-f]{64}");
    }

    @Test
    void aChangedClassChangesTheHash() throws IOException {
        String before = hash().orElseThrow();
        Files.writeString(classes.resolve("org/Check.class"), "two");
        assertThat(hash()).isPresent().isNotEqualTo(Optional.of(before));
    }

    @Test
    void aChangedLibraryChangesTheHash() throws IOException {
        String before = hash().orElseThrow();
        library = jar("library.jar", "org/Unit.class", "two", new Manifest());
        assertThat(hash()).isPresent().isNotEqualTo(Optional.of(before));
    }

    @Test
    void anotherJdkChangesTheHash() {
        String path = classes.toString();
        assertThat(ProgramHash.of(path, JDK)).isNotEqualTo(ProgramHash.of(path, "21.0.9+10"));
    }

    @Test
    void whatElseLiesAmongTheClassesDoesNotCount() throws IOException {
        String before = hash().orElseThrow();
        Files.writeString(classes.resolve("style.css"), "p { margin: 0 }");
        assertThat(hash()).contains(before);
    }

    @Test
    void aJarThatNamesOthersLeavesADoubt() throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.CLASS_PATH, "other.jar");
        library = jar("library.jar", "org/Unit.class", "one", manifest);
        assertThat(hash()).isEmpty();
    }

    @Test
    void whatIsMissingOrUnreadableLeavesADoubt() throws IOException {
        assertThat(ProgramHash.of("", JDK)).isEmpty();
        assertThat(ProgramHash.of(folder.resolve("nowhere").toString(), JDK)).isEmpty();
        Files.writeString(library, "no jar");
        assertThat(hash()).isEmpty();
    }
}
