package org.groundline.bank;

import org.jspecify.annotations.Nullable;

import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Path;

/// Where a bank lies: in a folder, or in the program itself, which may be a jar. The folder can be
/// read until the location is closed.
public final class BankLocation implements AutoCloseable {
    private static final String SHIPPED = "question-bank";

    private final Path folder;
    private final @Nullable FileSystem archive;

    private BankLocation(Path folder, @Nullable FileSystem archive) {
        this.folder = folder;
        this.archive = archive;
    }

    public static BankLocation at(Path folder) {
        return new BankLocation(folder, null);
    }

    /// The bank that comes with the program.
    public static BankLocation shipped() throws IOException {
        return within(BankLocation.class.getClassLoader());
    }

    /// The bank among a class loader's resources.
    static BankLocation within(ClassLoader loader) throws IOException {
        URL list = loader.getResource(SHIPPED + "/" + SyllabusFile.NAME);
        if (list == null) {
            throw new IOException("the program has no folder " + SHIPPED + " inside");
        }
        return list.openConnection() instanceof JarURLConnection jar
                ? inJar(path(jar.getJarFileURL()))
                : at(path(list).resolveSibling(""));
    }

    private static BankLocation inJar(Path jar) throws IOException {
        FileSystem archive = FileSystems.newFileSystem(jar);
        return new BankLocation(archive.getPath("/", SHIPPED), archive);
    }

    private static Path path(URL url) throws IOException {
        try {
            return Path.of(new URI(url.toString()));
        } catch (URISyntaxException e) {
            throw new IOException("not a file: " + url, e);
        }
    }

    public Path folder() {
        return folder;
    }

    @Override
    public void close() throws IOException {
        if (archive != null) {
            archive.close();
        }
    }
}
