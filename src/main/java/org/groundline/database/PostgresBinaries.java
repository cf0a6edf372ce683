package org.groundline.database;

import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.compressors.xz.XZCompressorInputStream;
import org.groundline.error.Refusal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/// PostgreSQL's programs for this platform, unpacked from the archive that the build brought along.
record PostgresBinaries(Path folder) {
    /// The release of PostgreSQL that the build brings along.
    static final String VERSION = "18.6";

    static final int MAJOR = 18;

    /// Unpacks the programs below a folder, once.
    static PostgresBinaries unpackedIn(Path parent) throws IOException {
        Path folder = parent.resolve("postgresql-" + VERSION);
        Path done = folder.resolve("unpacked");
        if (!Files.exists(done)) {
            try (InputStream archive = open()) {
                unpack(archive, folder);
            }
            Files.writeString(done, VERSION);
        }
        return new PostgresBinaries(folder);
    }

    /// Returns the path of a program such as `initdb`.
    String program(String name) {
        return folder.resolve("bin").resolve(name).toString();
    }

    private static InputStream open() {
        for (String name : archives()) {
            InputStream stream = PostgresBinaries.class.getResourceAsStream("/" + name);
            if (stream != null) {
                return stream;
            }
        }
        throw new Refusal.Conflict(
                "This build carries no PostgreSQL for %s on %s. Give the address of one in GROUNDLINE_DB_URL."
                        .formatted(System.getProperty("os.name"), System.getProperty("os.arch")));
    }

    private static List<String> archives() {
        String os = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        String system = os.contains("win") ? "windows" : os.contains("mac") ? "darwin" : "linux";
        boolean arm = System.getProperty("os.arch").equals("aarch64");
        return arm
                ? List.of(
                        "postgres-" + system + "-arm_64.txz", "postgres-" + system + "-aarch64.txz")
                : List.of("postgres-" + system + "-x86_64.txz");
    }

    private static void unpack(InputStream archive, Path folder) throws IOException {
        Files.createDirectories(folder);
        try (var tar = new TarArchiveInputStream(new XZCompressorInputStream(archive))) {
            for (TarArchiveEntry entry = tar.getNextEntry();
                    entry != null;
                    entry = tar.getNextEntry()) {
                unpack(tar, entry, folder);
            }
        }
    }

    private static void unpack(TarArchiveInputStream tar, TarArchiveEntry entry, Path folder)
            throws IOException {
        Path target = folder.resolve(entry.getName()).normalize();
        if (!target.startsWith(folder)) {
            throw new IOException("the archive holds a path outside itself: " + entry.getName());
        }
        if (entry.isDirectory()) {
            Files.createDirectories(target);
            return;
        }
        Files.createDirectories(parentOf(target));
        Files.deleteIfExists(target);
        if (entry.isSymbolicLink()) {
            Files.createSymbolicLink(target, Path.of(entry.getLinkName()));
        } else {
            Files.copy(tar, target);
            if ((entry.getMode() & 0100) != 0) {
                makeExecutable(target);
            }
        }
    }

    private static Path parentOf(Path target) throws IOException {
        Path parent = target.getParent();
        if (parent == null) {
            throw new IOException("the archive holds a path without a folder: " + target);
        }
        return parent;
    }

    private static void makeExecutable(Path file) throws IOException {
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Set<PosixFilePermission> permissions =
                    EnumSet.copyOf(Files.getPosixFilePermissions(file));
            permissions.add(PosixFilePermission.OWNER_EXECUTE);
            Files.setPosixFilePermissions(file, permissions);
        }
    }
}
