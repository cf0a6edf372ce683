package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

class BankLocationTest {
    @TempDir private Path folder;

    @Test
    void aBankInsideAJarIsTheSameBank() throws Exception {
        Path jar = jarWith(SmallBank.SOUND);
        try (var loader = loader(jar);
                BankLocation location = BankLocation.within(loader)) {
            Questions inJar = Questions.load(location.folder());
            assertThat(inJar.hash()).isEqualTo(Questions.load(SmallBank.SOUND).hash());
        }
    }

    @Test
    void findingsInsideAJarNameTheSameFiles() throws Exception {
        SmallBank spoilt = SmallBank.copiedTo(folder.resolve("bank"));
        spoilt.replace(SmallBank.FIXED, "level: recall", "level: easy").write("EQU/x.txt", "x");
        try (var loader = loader(jarWith(spoilt.folder()));
                BankLocation location = BankLocation.within(loader)) {
            assertThat(Questions.check(location.folder()).findings())
                    .isEqualTo(Questions.check(spoilt.folder()).findings());
        }
    }

    @Test
    void aBankAmongClassesIsFound() throws Exception {
        SmallBank bank = SmallBank.copiedTo(folder.resolve("with a space/question-bank"));
        try (var loader = loader(bank.folder().resolveSibling(""));
                BankLocation location = BankLocation.within(loader)) {
            assertThat(Files.isSameFile(location.folder(), bank.folder())).isTrue();
        }
    }

    @Test
    void aProgramWithoutABankSaysSo() throws Exception {
        try (var loader = loader(folder)) {
            assertThatThrownBy(() -> BankLocation.within(loader))
                    .isInstanceOf(IOException.class)
                    .hasMessage("the program has no folder question-bank inside");
        }
    }

    @Test
    void aFolderThatIsNotThereIsNoBank() {
        assertThat(Questions.check(folder.resolve("nowhere")).errors())
                .extracting(finding -> finding.file() + " " + finding.rule())
                .containsExactly(
                        "syllabus.yaml file-missing",
                        "misconceptions.yaml file-missing",
                        "sources.yaml file-missing");
    }

    private static URLClassLoader loader(Path place) throws IOException {
        return new URLClassLoader(new URL[] {place.toUri().toURL()}, null);
    }

    private Path jarWith(Path bank) throws IOException {
        Path jar = folder.resolve("program.jar");
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
                Stream<Path> files = Files.walk(bank)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                List<String> path =
                        Stream.of(bank.relativize(file).toString().split("[/\\\\]")).toList();
                out.putNextEntry(new JarEntry("question-bank/" + String.join("/", path)));
                Files.copy(file, out);
            }
        }
        return jar;
    }
}
