package org.groundline.bank.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/// A file of the bank on its way from bytes to a tree. Each limit keeps a hostile or broken file
/// from costing more than its own refusal.
public final class BankFile {
    private static final int MOST_BYTES = 1_000_000;

    private BankFile() {}

    /// Reads the file, or notes why it cannot be read.
    public static Optional<Yaml> read(Path file, Notes notes) {
        return text(file, notes).flatMap(text -> parse(text, notes));
    }

    /// The tree that a text spells, or empty after noting why it spells none.
    public static Optional<Yaml> parse(String text, Notes notes) {
        try {
            return Optional.of(YamlTree.of(text));
        } catch (YamlFault fault) {
            fault.noteIn(notes);
            return Optional.empty();
        }
    }

    /// The text of the file, or empty after noting why it cannot be read.
    public static Optional<String> text(Path file, Notes notes) {
        try {
            return Optional.of(text(file));
        } catch (YamlFault fault) {
            fault.noteIn(notes);
        } catch (IOException e) {
            notes.add(
                    Rule.FILE_UNREADABLE,
                    1,
                    "the file cannot be read: " + e.getClass().getSimpleName(),
                    "check that it exists and that its permissions allow reading");
        }
        return Optional.empty();
    }

    private static String text(Path file) throws IOException, YamlFault {
        if (Files.isDirectory(file)) {
            throw new YamlFault(
                    Rule.FILE_UNREADABLE,
                    1,
                    "this is a folder",
                    "rename it and put a file of this name in its place");
        }
        if (Files.size(file) > MOST_BYTES) {
            throw new YamlFault(
                    Rule.FILE_TOO_LARGE,
                    1,
                    "the file has more than 1 MB",
                    "split it into smaller files of the same topic");
        }
        return decode(Files.readAllBytes(file));
    }

    private static String decode(byte[] bytes) throws YamlFault {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        var result =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .decode(in, out, true);
        if (result.isError()) {
            throw new YamlFault(
                    Rule.FILE_UNREADABLE,
                    lineOf(bytes, in.position()),
                    "the file is not UTF-8 text",
                    "save it in the encoding UTF-8");
        }
        return out.flip().toString();
    }

    private static int lineOf(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        return line;
    }
}
