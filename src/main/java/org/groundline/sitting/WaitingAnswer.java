package org.groundline.sitting;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;

import java.util.UUID;
import java.util.concurrent.CompletableFuture;

/// An answer on its way into the database.
///
/// @param reading a letter, or a decimal in the item's unit
/// @param kept completed after the commit: true if a row was added, false if it was refused or is a
///   replay
record WaitingAnswer(
        SchoolId school,
        SubjectId subject,
        UUID sitting,
        GivenAnswer given,
        String reading,
        CompletableFuture<Boolean> kept) {
    /// What makes an answer one: two with the same id are one answer sent twice.
    record AnswerId(UUID school, UUID clientId) {}

    AnswerId id() {
        return new AnswerId(school.value(), given.clientId());
    }
}
