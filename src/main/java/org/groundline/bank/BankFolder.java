package org.groundline.bank;

import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/// What lies in a bank's folder, which may be inside an archive.
final class BankFolder {
    private static final Set<String> OTHER_FILES = Set.of("README.md", "LICENSE");
    private static final String SCHEMA = "schema";
    private static final String ILLUSTRATIONS = "illustrations";
    private static final String SVG = ".svg";
    private static final String BRIEFS = "briefs";
    private static final String MD = ".md";
    private static final Set<String> NO_MODULES = Set.of(SCHEMA, ILLUSTRATIONS, BRIEFS);

    private final Path folder;

    BankFolder(Path folder) {
        this.folder = folder;
    }

    boolean exists() {
        return Files.isDirectory(folder);
    }

    Path list(String name) {
        return folder.resolve(name);
    }

    /// A topic file, and the name of the folder it lies in.
    record TopicPath(Path file, String module) {}

    /// All topic files, in the order of their names.
    List<TopicPath> topics() {
        return modules().stream()
                .flatMap(m -> topics(m).map(f -> new TopicPath(f, name(m))))
                .toList();
    }

    private List<Path> modules() {
        return entries(folder).stream()
                .filter(Files::isDirectory)
                .filter(d -> !NO_MODULES.contains(name(d)))
                .filter(d -> !isLanguage(d))
                .toList();
    }

    /// The folders of other languages, each a small bank of texts with the same file names.
    List<BankFolder> languages() {
        return entries(folder).stream()
                .filter(d -> Files.isDirectory(d) && isLanguage(d))
                .map(BankFolder::new)
                .toList();
    }

    /// Languages have two small letters, modules have capitals.
    private static boolean isLanguage(Path entry) {
        return name(entry).matches("[a-z]{2}");
    }

    /// The folder's own name.
    String name() {
        return name(folder);
    }

    /// The folder itself.
    Path path() {
        return folder;
    }

    /// The two lists that a language may have.
    List<Path> translatedLists() {
        return Stream.of(SyllabusFile.NAME, MisconceptionsFile.NAME)
                .map(this::list)
                .filter(Files::exists)
                .toList();
    }

    /// The drawings made by hand.
    List<Path> illustrations() {
        return within(ILLUSTRATIONS).filter(f -> name(f).endsWith(SVG)).toList();
    }

    /// The briefs of topics.
    List<Path> briefs() {
        return within(BRIEFS).filter(f -> name(f).endsWith(MD)).toList();
    }

    private Stream<Path> within(String name) {
        Path inner = folder.resolve(name);
        return Files.isDirectory(inner) ? entries(inner).stream() : Stream.of();
    }

    /// The id of an illustration by its file.
    static String illustrationId(Path file) {
        return withoutEnd(name(file), SVG);
    }

    /// The topic of a brief by its file.
    static String briefId(Path file) {
        return withoutEnd(name(file), MD);
    }

    /// The id of the illustration at an address that a brief gives; empty for another address.
    static Optional<String> illustrationAt(String address) {
        String start = "../" + ILLUSTRATIONS + "/";
        return address.startsWith(start) && address.endsWith(SVG)
                ? Optional.of(withoutEnd(address.substring(start.length()), SVG))
                : Optional.empty();
    }

    private static String withoutEnd(String text, String end) {
        return text.substring(0, text.length() - end.length());
    }

    private static Stream<Path> topics(Path module) {
        return entries(module).stream().filter(BankFolder::isTopicFile);
    }

    /// Files that nobody reads, so that a misnamed one does not go unnoticed.
    List<Path> strangers() {
        Set<String> lists = Set.of(SyllabusFile.NAME, MisconceptionsFile.NAME, SourcesFile.NAME);
        Stream<Path> atTop =
                entries(folder).stream()
                        .filter(f -> !Files.isDirectory(f))
                        .filter(f -> !lists.contains(name(f)) && !OTHER_FILES.contains(name(f)));
        Stream<Path> below =
                modules().stream().flatMap(m -> entries(m).stream()).filter(f -> !isTopicFile(f));
        Stream<Path> beside = within(ILLUSTRATIONS).filter(f -> !name(f).endsWith(SVG));
        Stream<Path> amongBriefs = within(BRIEFS).filter(f -> !name(f).endsWith(MD));
        return Stream.of(atTop, below, beside, amongBriefs)
                .flatMap(strangers -> strangers)
                .toList();
    }

    /// The path from the bank's folder, with `/` on every system.
    String relative(Path file) {
        String path = folder.relativize(file).toString();
        return path.replace(folder.getFileSystem().getSeparator(), "/");
    }

    private static String name(Path path) {
        String name = String.valueOf(path.getFileName());
        return name.endsWith("/") ? name.substring(0, name.length() - 1) : name;
    }

    static void noteStranger(Path stranger, Notes notes) {
        boolean folder = Files.isDirectory(stranger);
        notes.add(
                Rule.FILE_NOT_READ,
                1,
                "the %s is not part of the bank and was not read"
                        .formatted(folder ? "folder" : "file"),
                folder
                        ? "put topic files right into the folder of their module"
                        : "name a topic file 'module/topic-name.yaml', or move it elsewhere");
    }

    private static boolean isTopicFile(Path file) {
        return name(file).endsWith(".yaml") && !Files.isDirectory(file);
    }

    private static List<Path> entries(Path folder) {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.filter(f -> !name(f).startsWith("."))
                    .sorted(Comparator.comparing(BankFolder::name))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
