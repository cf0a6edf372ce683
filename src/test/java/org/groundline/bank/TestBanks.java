package org.groundline.bank;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/// Copies of whole banks.
final class TestBanks {
    private TestBanks() {}

    /// A copy of a bank without its translations.
    static SmallBank withoutLanguages(Path bank, Path copy) throws IOException {
        try (Stream<Path> files = Files.walk(bank)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path name = bank.relativize(file);
                if (!name.getName(0).toString().matches("[a-z]{2}")) {
                    Path target = copy.resolve(name.toString());
                    Files.createDirectories(target.resolveSibling(""));
                    Files.copy(file, target);
                }
            }
        }
        return new SmallBank(copy);
    }
}
