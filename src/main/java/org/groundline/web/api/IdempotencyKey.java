package org.groundline.web.api;

import io.javalin.http.Context;

import org.groundline.error.Refusal;
import org.groundline.web.request.Form;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// The header by which an answer that is sent again is known: a String of RFC 9651 that spells a
/// UUID. It is the client id under which the answer is kept.
final class IdempotencyKey {
    private static final String HEADER = "Idempotency-Key";
    private static final Pattern STRING = Pattern.compile(" *\"([^\"\\\\]*)\" *");

    private IdempotencyKey() {}

    /// @throws Refusal.Invalid if there is none, or none of that form
    static UUID of(Context ctx) {
        List<String> given = Collections.list(ctx.req().getHeaders(HEADER));
        if (given.isEmpty()) {
            throw new Refusal.Invalid(
                    HEADER,
                    "Send a new UUID in quotation marks with each answer, and the same one when it is sent again.");
        }
        return Optional.of(STRING.matcher(given.get(0)))
                .filter(Matcher::matches)
                .filter(m -> given.size() == 1)
                .flatMap(m -> Form.uuid(m.group(1)))
                .orElseThrow(
                        () -> new Refusal.Invalid(HEADER, "This is no UUID in quotation marks."));
    }
}
