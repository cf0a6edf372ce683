package org.groundline.command;

import org.jspecify.annotations.NullMarked;

import java.io.BufferedWriter;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Serial;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Locale;
import java.util.Optional;

/// The output of a command that writes thousands of parts: in large pieces instead of a flush for
/// each line, and only as long as somebody reads it.
@NullMarked
final class LongOutput {
    private static final int PIECE = 1 << 16;

    /// How many parts are written before the next look whether anybody reads them.
    private static final int BETWEEN_LOOKS = 500;

    private final PrintWriter target;
    private final Writer pieces;
    private int parts;

    /// The output could not be written any further.
    static final class Ended extends RuntimeException {
        @Serial private static final long serialVersionUID = 1L;

        private Ended(String why) {
            super(why, null, false, false);
        }

        /// What to tell a person; empty where the reader of a pipe has gone, as `head` does, for
        /// that is no fault. The system's words for it hold "pipe" in most languages; elsewhere the
        /// person is told once too often.
        Optional<String> trouble() {
            String why = String.valueOf(getMessage());
            return Optional.of("The output could not be written to its end: " + why)
                    .filter(told -> !why.toLowerCase(Locale.ROOT).contains("pipe"));
        }
    }

    LongOutput(PrintWriter target) {
        this.target = target;
        this.pieces = new BufferedWriter(target, PIECE);
    }

    /// For whoever writes in another way than by lines.
    Writer writer() {
        return pieces;
    }

    void line(String text) {
        try {
            pieces.append(text).append(System.lineSeparator());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /// @throws Ended if the parts so far could not be written
    void endPart() {
        parts++;
        if (parts % BETWEEN_LOOKS == 0) {
            flush();
        }
    }

    /// @throws Ended if the parts so far could not be written
    void flush() {
        try {
            pieces.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (System.out.checkError()) {
            throw new Ended(reason());
        }
        if (target.checkError()) {
            throw new Ended("it is closed or full");
        }
    }

    /// Standard output keeps to itself why it failed; one more character makes the system say it
    /// again. Not to be closed, as it is not ours.
    private static String reason() {
        try {
            new FileOutputStream(FileDescriptor.out).write('\n');
            return "a part of it is missing";
        } catch (IOException e) {
            return String.valueOf(e.getMessage());
        }
    }
}
