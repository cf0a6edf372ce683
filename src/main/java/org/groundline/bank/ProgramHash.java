package org.groundline.bank;

import org.groundline.ledger.Digests;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/// The hash of all code that this program runs: its own, its libraries', and which JDK.
///
/// Of a jar it takes the names, sizes and checksums of the entries, which stand together at its
/// end; of a folder the class files themselves.
final class ProgramHash {
    private ProgramHash() {}

    /// The hash, or empty where some of the code may lie elsewhere than the class path says.
    static Optional<String> find() {
        return System.getProperty("jdk.module.path") == null
                ? of(System.getProperty("java.class.path", ""), Runtime.version().toString())
                : Optional.empty();
    }

    static Optional<String> of(String classPath, String jdk) {
        StringBuilder code = new StringBuilder(jdk).append('\n');
        try {
            for (String part : classPath.split(Pattern.quote(File.pathSeparator))) {
                if (part.isEmpty() || !add(Path.of(part), code)) {
                    return Optional.empty();
                }
            }
            return Optional.of(Digests.hex(code.toString()));
        } catch (IOException | UncheckedIOException unreadable) {
            return Optional.empty();
        }
    }

    private static boolean add(Path part, StringBuilder code) throws IOException {
        if (Files.isDirectory(part)) {
            addClasses(part, code);
            return true;
        }
        return Files.isRegularFile(part) && addJar(part, code);
    }

    private static void addClasses(Path folder, StringBuilder code) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> classes =
                    files.filter(f -> f.toString().endsWith(".class"))
                            .sorted(Comparator.comparing(Path::toString))
                            .toList();
            for (Path file : classes) {
                byte[] hash = Digests.sha256(Files.readAllBytes(file));
                code.append(folder.relativize(file)).append(' ');
                code.append(HexFormat.of().formatHex(hash)).append('\n');
            }
        }
    }

    /// False for a jar that names others, as their code would be missed.
    private static boolean addJar(Path file, StringBuilder code) throws IOException {
        try (JarFile jar = new JarFile(file.toFile(), false)) {
            jar.stream().forEach(entry -> add(entry, code));
            Manifest manifest = jar.getManifest();
            return manifest == null || manifest.getMainAttributes().getValue("Class-Path") == null;
        }
    }

    private static void add(ZipEntry entry, StringBuilder code) {
        code.append(entry.getName()).append(' ');
        code.append(entry.getSize()).append(' ').append(entry.getCrc()).append('\n');
    }
}
