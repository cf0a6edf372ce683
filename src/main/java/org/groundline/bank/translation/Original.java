package org.groundline.bank.translation;

import static java.util.stream.Collectors.joining;

import java.util.List;

/// What is to be translated: its English texts as they are now.
///
/// @param file where it stands, from the bank's folder; a translation stands in the file of the
///   same name in the folder of its language
/// @param topic the topic of a question; empty otherwise
/// @param version the SHA-256 of its canonical content, in hexadecimal digits
/// @param parts in the order of their file
public record Original(
        Kind kind, String id, String file, String topic, String version, List<Part> parts) {
    public Original {
        parts = List.copyOf(parts);
    }

    String name() {
        return kind.word() + " " + id;
    }

    long options() {
        return parts.stream().filter(Part::isOption).count();
    }

    /// The marks of all parts, from which a later version can tell which of them moved.
    String marks() {
        return parts.stream().map(Part::mark).collect(joining("-"));
    }
}
