package org.groundline.authoring;

import org.groundline.database.SubjectId;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/// One text of one question, as its author wrote it. It never changes: the next text is the next
/// edition.
///
/// @param number from 1, by question
/// @param text in the form of a topic file of the bank
/// @param version of the question that the text is; empty where the text has errors
/// @param origin what it was begun from; empty for a new question
public record Edition(
        UUID id,
        String questionId,
        int number,
        String text,
        Optional<String> version,
        Optional<Origin> origin,
        SubjectId author,
        Instant writtenAt) {
    /// What an edition was begun from.
    ///
    /// @param version of the question that was asked then
    public record Origin(String version, Change change) {}
}
