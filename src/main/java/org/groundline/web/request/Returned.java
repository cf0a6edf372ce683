package org.groundline.web.request;

import io.javalin.http.Context;

import org.groundline.error.Refusal;

import java.util.Map;
import java.util.function.Consumer;

/// A form as it is handed back: what was typed into it, and why it was refused.
///
/// @param typed by field; never a password
/// @param field the one at fault; empty where it is the form as a whole
/// @param message why; empty for a form that was not sent yet
public record Returned(Map<String, String> typed, String field, String message) {
    /// A form that was not sent yet.
    public static final Returned NOTHING = new Returned(Map.of(), "", "");

    public Returned {
        typed = Map.copyOf(typed);
    }

    /// Carries a change out and goes on; where it is refused, shows the page again with what was
    /// typed.
    ///
    /// @param next the address to go on to
    public static void change(
            Context ctx,
            String next,
            Map<String, String> typed,
            Runnable change,
            Consumer<Returned> again) {
        try {
            change.run();
            ctx.redirect(next);
        } catch (Refusal.Invalid
                | Refusal.Conflict
                | Refusal.Stale
                | Refusal.NotFound
                | Refusal.TooMany e) {
            ctx.status(Errors.statusOf(e));
            String field = e instanceof Refusal.Invalid invalid ? invalid.field() : "";
            again.accept(new Returned(typed, field, Errors.messageOf(e)));
        }
    }

    public boolean refused() {
        return !message.isEmpty();
    }

    /// What was typed into a field; empty where nothing was.
    public String text(String name) {
        return typed.getOrDefault(name, "");
    }

    /// What was typed into a field of a form that was sent, else what stands there at first.
    public String text(String name, String first) {
        return typed.getOrDefault(name, first);
    }

    public boolean atFault(String name) {
        return refused() && field.equals(name);
    }
}
