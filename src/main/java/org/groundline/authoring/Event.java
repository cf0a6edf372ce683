package org.groundline.authoring;

import org.groundline.database.SubjectId;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/// Something that happened to an edition, or to a question as a whole.
///
/// @param edition empty for the question as a whole
/// @param validity for an approval: the days on which the edition may be asked
/// @param remark the id of the reason given, which may have been erased since
public record Event(
        UUID id,
        Kind kind,
        String questionId,
        Optional<UUID> edition,
        Optional<Validity> validity,
        SubjectId actor,
        Instant at,
        Optional<UUID> remark) {
    /// What may happen.
    public enum Kind {
        SUBMITTED("submitted"),
        SENT_BACK("sent back"),
        APPROVED("approved"),
        RETIRED("retired"),
        WITHDRAWN("withdrawn"),
        RESTORED("restored");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /// The word in the table and the ledger.
        public String word() {
            return word;
        }
    }

    /// Days of the school's zone, both included.
    ///
    /// @param until empty where no end is set
    public record Validity(LocalDate from, Optional<LocalDate> until) {
        boolean hasBegun(LocalDate today) {
            return !today.isBefore(from);
        }

        boolean isOver(LocalDate today) {
            return until.filter(today::isAfter).isPresent();
        }
    }
}
