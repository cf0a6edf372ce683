package org.groundline.web.request;

import io.javalin.http.Context;

import org.groundline.error.Refusal;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.regex.Pattern;

/// Reads what a browser sent: fields by name, ids from the address. What is missing or unreadable
/// is refused by name; so are fields that nobody asked for.
public final class Form {
    private static final Pattern ID =
            Pattern.compile("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}");

    private final Context ctx;

    private Form(Context ctx) {
        this.ctx = ctx;
    }

    /// Opens the form that a request carries.
    ///
    /// @param fields the names it may carry, besides the form token
    public static Form of(Context ctx, String... fields) {
        Set<String> unknown = new TreeSet<>(ctx.formParamMap().keySet());
        unknown.removeAll(Set.of(fields));
        unknown.remove(Guard.CSRF_FIELD);
        if (!unknown.isEmpty()) {
            throw new Refusal.Invalid(
                    "The form has fields that are not known here: " + String.join(", ", unknown));
        }
        return new Form(ctx);
    }

    /// Returns a field's text; empty where it was left out.
    public String text(String name) {
        String value = ctx.formParam(name);
        return value == null ? "" : value;
    }

    /// Returns a field that is an id and may come several times, such as ticked boxes.
    public List<UUID> ids(String name) {
        return ctx.formParams(name).stream().map(text -> id(name, text)).toList();
    }

    /// Returns the texts of a field that may come several times, such as ticked boxes.
    public List<String> texts(String name) {
        return List.copyOf(ctx.formParams(name));
    }

    /// Returns what was typed, by field, to be handed back; never a password.
    public Map<String, String> typed() {
        Map<String, String> typed = new HashMap<>();
        ctx.formParamMap().keySet().forEach(name -> typed.put(name, text(name)));
        typed.remove("password");
        typed.remove(Guard.CSRF_FIELD);
        return typed;
    }

    /// Returns a field that is an id.
    public UUID id(String name) {
        return id(name, text(name));
    }

    private static UUID id(String name, String text) {
        return uuid(text).orElseThrow(() -> new Refusal.Invalid(name, "Choose one from the list."));
    }

    /// Returns a field that is an id or was left empty.
    public Optional<UUID> findId(String name) {
        return text(name).isBlank() ? Optional.empty() : Optional.of(id(name));
    }

    /// Returns a field that is a whole number between two bounds.
    public int number(String name, int low, int high) {
        String text = text(name).strip();
        if (!text.matches("-?\\d{1,9}")
                || Integer.parseInt(text) < low
                || Integer.parseInt(text) > high) {
            throw new Refusal.Invalid(
                    name, "Write a whole number from %d to %d.".formatted(low, high));
        }
        return Integer.parseInt(text);
    }

    /// Returns a field that is a day.
    public LocalDate day(String name) {
        try {
            return LocalDate.parse(text(name));
        } catch (DateTimeParseException e) {
            throw new Refusal.Invalid(
                    name, "Write a day as year, month and day, such as 2027-03-31.");
        }
    }

    /// Returns an id from the address.
    ///
    /// @throws Refusal.NotFound if it is none: then there is no such thing
    public static UUID pathId(Context ctx, String name) {
        return uuid(ctx.pathParam(name))
                .orElseThrow(() -> new Refusal.NotFound("There is no such page or record."));
    }

    /// Returns an id from the query; empty where it is left out or empty.
    public static Optional<UUID> queryId(Context ctx, String name) {
        String value = ctx.queryParam(name);
        if (value == null || value.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                uuid(value)
                        .orElseThrow(
                                () ->
                                        new Refusal.Invalid(
                                                name, "This is no id that is known here.")));
    }

    /// Returns the id that a text spells.
    public static Optional<UUID> uuid(String text) {
        return ID.matcher(text).matches() ? Optional.of(UUID.fromString(text)) : Optional.empty();
    }
}
