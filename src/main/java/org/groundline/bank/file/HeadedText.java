package org.groundline.bank.file;

import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Optional;

/// A text with a head in YAML before it, between two lines of three hyphens.
///
/// @param text in Unicode's composed form, with one kind of line end
/// @param line of the file on which the text begins, counted from 1
public record HeadedText(Yaml head, String text, int line) {
    private static final String FENCE = "---";

    /// Reads the file, or notes why it cannot be read.
    public static Optional<HeadedText> read(Path file, Notes notes) {
        return BankFile.text(file, notes)
                .flatMap(
                        whole -> {
                            try {
                                return Optional.of(of(whole.lines().toList()));
                            } catch (YamlFault fault) {
                                fault.noteIn(notes);
                                return Optional.empty();
                            }
                        });
    }

    /// The line before the head is left empty, so that the head's lines keep their numbers.
    private static HeadedText of(List<String> lines) throws YamlFault {
        int end = endOfHead(lines);
        Yaml head = YamlTree.of("\n" + String.join("\n", lines.subList(1, end)));
        List<String> text = lines.subList(end + 1, lines.size());
        refuseInvisible(text, end + 2);
        String joined = String.join("\n", text);
        return new HeadedText(head, Normalizer.normalize(joined, Normalizer.Form.NFC), end + 2);
    }

    private static int endOfHead(List<String> lines) throws YamlFault {
        if (lines.isEmpty() || !lines.getFirst().equals(FENCE)) {
            throw noHead(1, "the file does not begin with '---'");
        }
        int end = lines.subList(1, lines.size()).indexOf(FENCE) + 1;
        if (end == 0) {
            throw noHead(1, "the head of the file has no end");
        }
        return end;
    }

    private static YamlFault noHead(int line, String problem) {
        return new YamlFault(
                Rule.SHAPE,
                line,
                problem,
                "write the head between two lines of '---' and the text below it");
    }

    private static void refuseInvisible(List<String> text, int first) throws YamlFault {
        for (int i = 0; i < text.size(); i++) {
            Optional<String> bad = Characters.findForbidden(text.get(i));
            if (bad.isPresent()) {
                throw new YamlFault(
                        Rule.CHARACTER,
                        first + i,
                        "the text contains the invisible character " + bad.get(),
                        "remove it and type the text again");
            }
        }
    }
}
