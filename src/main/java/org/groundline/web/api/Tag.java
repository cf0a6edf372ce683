package org.groundline.web.api;

import io.javalin.http.Context;

import org.groundline.error.Refusal;
import org.groundline.ledger.Digests;
import org.jspecify.annotations.Nullable;

import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/// A strong entity tag (RFC 9110 section 8.8.3): the same tag, the same content to the byte.
///
/// @param text with its quotation marks
record Tag(String text) {
    private static final String ONE = "(?:W/)?\"[\\x21\\x23-\\x7e\\x80-\\xff]*\"";
    private static final Pattern LIST =
            Pattern.compile("\\s*" + ONE + "(?:\\s*,\\s*" + ONE + ")*\\s*");
    private static final int DIGITS = 32;

    /// The tag of a content.
    static Tag of(byte[] content) {
        String digest = HexFormat.of().formatHex(Digests.sha256(content));
        return new Tag('"' + digest.substring(0, DIGITS) + '"');
    }

    /// The tag of a numbered version.
    static Tag of(int version) {
        return new Tag("\"" + version + '"');
    }

    /// Answers with a content and this tag; with 304 and nothing where the client has it already.
    void answer(Context ctx, String type, byte[] content) {
        ctx.header("ETag", text);
        if (isIn("If-None-Match", ctx, true).orElse(false)) {
            ctx.status(304);
        } else {
            ctx.status(200).contentType(type).result(content);
        }
    }

    /// Refuses a change that does not say which state it is based on, or is based on another one.
    void requireMatch(Context ctx) {
        boolean same =
                isIn("If-Match", ctx, false)
                        .orElseThrow(
                                () ->
                                        new Refusal.Unconditional(
                                                "Send the ETag of what you looked at as If-Match."));
        requireSame(same);
    }

    /// As [#requireMatch], where saying so is left to the client.
    void requireMatchIfSent(Context ctx) {
        requireSame(isIn("If-Match", ctx, false).orElse(true));
    }

    private static void requireSame(boolean same) {
        if (!same) {
            throw new Refusal.Stale(
                    "This was changed since you looked at it. Look again, then repeat the change.");
        }
    }

    private Optional<Boolean> isIn(String header, Context ctx, boolean weak) {
        @Nullable String given = ctx.header(header);
        if (given == null || given.strip().equals("*")) {
            return Optional.ofNullable(given).map(any -> true);
        }
        if (!LIST.matcher(given).matches()) {
            throw new Refusal.Invalid(header, "This is no list of entity tags, each in quotes.");
        }
        return Optional.of(
                Pattern.compile(ONE)
                        .matcher(given)
                        .results()
                        .map(MatchResult::group)
                        .map(tag -> weak ? tag.replaceFirst("^W/", "") : tag)
                        .anyMatch(text::equals));
    }
}
