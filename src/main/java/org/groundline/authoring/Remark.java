package org.groundline.authoring;

import org.groundline.database.SubjectId;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/// What somebody wrote about a question.
///
/// @param edition the text it is about; empty for the question as a whole
public record Remark(
        UUID id,
        String questionId,
        Optional<UUID> edition,
        SubjectId author,
        Instant writtenAt,
        String text) {}
