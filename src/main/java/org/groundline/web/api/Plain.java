package org.groundline.web.api;

import com.fasterxml.jackson.databind.JsonNode;

import org.groundline.error.Refusal;

/// Keeps out what no field may hold: null, and texts with characters that no keyboard types and no
/// database keeps.
final class Plain {
    private Plain() {}

    /// @throws Refusal.Invalid if a field of the object holds such a thing, however deep
    static void require(JsonNode body) {
        body.properties().forEach(field -> require(field.getKey(), field.getValue()));
    }

    private static void require(String field, JsonNode value) {
        if (value.isNull()) {
            throw new Refusal.Invalid(field, "Nothing may be null; leave the field out instead.");
        }
        if (value.isTextual() && !isPlain(value.textValue())) {
            throw new Refusal.Invalid(field, "This text has characters that cannot be kept.");
        }
        value.forEach(part -> require(field, part));
    }

    private static boolean isPlain(String text) {
        return text.codePoints().allMatch(Plain::isPlain);
    }

    private static boolean isPlain(int character) {
        boolean control = Character.isISOControl(character) && "\t\n\r".indexOf(character) < 0;
        boolean halved =
                character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
        return !control && !halved;
    }
}
