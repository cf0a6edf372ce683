package org.groundline.bench;

import org.groundline.bank.BankLocation;
import org.groundline.bank.KnownSound;
import org.groundline.bank.Questions;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// A bank of many questions in a folder of its own: the topic files of the shipped one again and
/// again, each time under other ids, so that fixed and numeric questions are mixed as they are
/// there. Beside it lies what a server keeps of the templates that it found sound.
record LargeBank(Path folder) implements AutoCloseable {
    /// The id of a question, as the shipped files write it.
    private static final Pattern ID = Pattern.compile("(?m)^  - id: .*$");

    static LargeBank make(int fewest) throws IOException {
        Path folder = Files.createTempDirectory("groundline-bench");
        try (BankLocation shipped = BankLocation.shipped()) {
            copy(shipped.folder(), bank(folder), fewest);
            Questions.load(bank(folder), KnownSound.in(data(folder)));
            return new LargeBank(folder);
        }
    }

    static Path bank(Path folder) {
        return folder.resolve("bank");
    }

    static Path data(Path folder) {
        return folder.resolve("data");
    }

    /// Copies the lists and the drawings once, and the topic files until there are enough
    /// questions.
    private static void copy(Path from, Path to, int fewest) throws IOException {
        for (Path list : Stream.concat(yaml(from, 1).stream(), drawings(from)).toList()) {
            write(to.resolve(from.relativize(list).toString()), Files.readString(list));
        }
        List<Path> topics =
                yaml(from, 2).stream().filter(file -> isTopic(from.relativize(file))).toList();
        int questions = 0;
        for (int i = 0; questions < fewest; i++) {
            Path topic = topics.get(i % topics.size());
            String ending = "-" + i / topics.size();
            String text = Files.readString(topic);
            String name = from.relativize(topic).toString().replace(".yaml", ending + ".yaml");
            write(to.resolve(name), ID.matcher(text).replaceAll("$0" + ending));
            questions += (int) ID.matcher(text).results().count();
        }
    }

    private static Stream<Path> drawings(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("illustrations"))) {
            return files.toList().stream();
        }
    }

    /// The YAML files so many steps below a folder.
    private static List<Path> yaml(Path folder, int depth) throws IOException {
        try (Stream<Path> files = Files.walk(folder, depth)) {
            return files.filter(f -> f.toString().endsWith(".yaml"))
                    .filter(f -> folder.relativize(f).getNameCount() == depth)
                    .sorted()
                    .toList();
        }
    }

    /// Modules have capitals; folders in small letters hold other languages.
    private static boolean isTopic(Path file) {
        return file.getName(0).toString().matches("[A-Z]+/?");
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.resolveSibling(""));
        Files.writeString(file, text);
    }

    @Override
    public void close() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(LargeBank::delete);
        }
    }

    private static void delete(Path path) {
        try {
            Files.delete(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
