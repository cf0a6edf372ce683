package org.groundline.web.api;

import org.groundline.database.SubjectId;
import org.groundline.record.SignOff;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;

/// A sign-off, and its reversal if there is one.
///
/// @param basis the sitting it rests on
record SignOffView(
        UUID signOff,
        UUID basis,
        NamedStaffView signedBy,
        Instant signedAt,
        Optional<ReversalView> reversal) {
    /// @param reason absent where it was erased
    record ReversalView(NamedStaffView reversedBy, Instant reversedAt, Optional<String> reason) {}

    static SignOffView of(
            SignOff signOff,
            Function<SubjectId, NamedStaffView> staff,
            Function<SignOff.Reversal, Optional<String>> reasons) {
        return new SignOffView(
                signOff.id(),
                signOff.basis(),
                staff.apply(signOff.instructor()),
                signOff.at(),
                signOff.reversal()
                        .map(r -> new ReversalView(staff.apply(r.by()), r.at(), reasons.apply(r))));
    }
}
