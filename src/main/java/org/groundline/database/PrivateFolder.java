package org.groundline.database;

import org.groundline.error.Refusal;
import org.jspecify.annotations.Nullable;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.HexFormat;

/// The data folder: closed to other users of the machine, held by one server at a time, with the
/// passwords of the embedded database made on first use.
final class PrivateFolder implements AutoCloseable {
    private static final int SECRET_BYTES = 24;

    private final Path path;
    private final FileChannel channel;

    private PrivateFolder(Path path, FileChannel channel) {
        this.path = path;
        this.channel = channel;
    }

    /// Makes the folder if need be and takes hold of it.
    ///
    /// @throws Refusal.Conflict if another running server holds it
    static PrivateFolder hold(Path path) throws IOException {
        Files.createDirectories(path);
        restrict(path, "rwx------");
        FileChannel channel =
                FileChannel.open(
                        path.resolve("in-use.lock"),
                        StandardOpenOption.CREATE,
                        StandardOpenOption.WRITE);
        if (tryLock(channel) == null) {
            channel.close();
            throw new Refusal.Conflict(
                    "The data folder %s is in use by another running Groundline. Stop that one first, or give this one its own folder with --data."
                            .formatted(path.toAbsolutePath()));
        }
        return new PrivateFolder(path, channel);
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (java.nio.channels.OverlappingFileLockException e) {
            return null;
        }
    }

    Path path(String name) {
        return path.resolve(name);
    }

    /// Returns the secret of this name, made at random the first time it is asked for.
    String secret(String name) throws IOException {
        Path file = path.resolve(name + ".secret");
        if (!Files.exists(file)) {
            byte[] bits = new byte[SECRET_BYTES];
            new SecureRandom().nextBytes(bits);
            Files.createFile(file);
            restrict(file, "rw-------");
            Files.writeString(file, HexFormat.of().formatHex(bits));
        }
        return Files.readString(file);
    }

    private static void restrict(Path path, String permissions) throws IOException {
        if (path.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(permissions));
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
