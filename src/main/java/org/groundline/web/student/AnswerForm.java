package org.groundline.web.student;

import io.javalin.http.Context;

import org.groundline.error.Refusal;
import org.groundline.sitting.GivenAnswer;
import org.groundline.web.request.Form;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/// An answer as the form of an item sends it.
///
/// @param sitting where the address does not name it: in practice
/// @param clientId made for this rendering of the form, so that a double click is one answer
/// @param flag whether the flag is to be set or taken away; empty where it stays as it is
record AnswerForm(
        Optional<UUID> sitting,
        UUID item,
        UUID clientId,
        int seat,
        int sequence,
        String answer,
        Go go,
        Optional<Boolean> flag) {
    private static final int MOST = 999_999_999;

    /// Where the student wants to go after the answer is kept.
    enum Go {
        STAY,
        BACK,
        NEXT,
        REVIEW
    }

    /// Reads the form.
    ///
    /// @throws Refusal.Invalid if a field other than the answer is not as the page made it
    static AnswerForm of(Context ctx) {
        Form form =
                Form.of(
                        ctx,
                        "sitting",
                        "item",
                        "clientId",
                        "seat",
                        "sequence",
                        "answer",
                        "go",
                        "flag");
        return new AnswerForm(
                form.findId("sitting"),
                form.id("item"),
                form.id("clientId"),
                form.number("seat", 1, MOST),
                form.number("sequence", 0, MOST),
                form.text("answer"),
                goOf(form.text("go")),
                flagOf(form.text("flag")));
    }

    private static Go goOf(String text) {
        return switch (text) {
            case "", "stay" -> Go.STAY;
            case "back" -> Go.BACK;
            case "next" -> Go.NEXT;
            case "review" -> Go.REVIEW;
            default -> throw new Refusal.Invalid("go", "There is no such way to go.");
        };
    }

    private static Optional<Boolean> flagOf(String text) {
        return switch (text) {
            case "" -> Optional.empty();
            case "yes" -> Optional.of(true);
            case "no" -> Optional.of(false);
            default -> throw new Refusal.Invalid("flag", "A flag is set with yes or no.");
        };
    }

    /// The answer for the door.
    ///
    /// @throws Refusal.Invalid if there is none, or it is far too long
    GivenAnswer given(Instant receivedAt) {
        return new GivenAnswer(
                clientId, item, seat, sequence, Optional.empty(), receivedAt, answer);
    }
}
