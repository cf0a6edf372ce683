package org.groundline.web.api;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import org.groundline.error.Refusal;
import org.jspecify.annotations.Nullable;

import java.io.IOException;
import java.util.Optional;

/// Reads a text into a tree, token by token, so that each refusal can name the field it lies in: by
/// its name at the top, by its JSON Pointer (RFC 6901) below. Where a fault lies in no field, it is
/// told by line and column.
final class BodyTree {
    private static final int DEEPEST = 8;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final JsonParser parser;

    private BodyTree(JsonParser parser) {
        this.parser = parser;
    }

    /// @throws Refusal.Invalid if the text is not one JSON object without nulls, repeated fields or
    ///   characters that cannot be kept
    static ObjectNode read(String text) {
        try (JsonParser parser = StrictJson.MAPPER.createParser(text)) {
            return new BodyTree(parser).root();
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot be opened", e);
        }
    }

    /// A field as a refusal names it.
    static String nameOf(JsonPointer field) {
        boolean nested = !field.matches() && !field.tail().matches();
        return nested ? field.toString() : field.matches() ? "" : field.getMatchingProperty();
    }

    private ObjectNode root() {
        if (next() != JsonToken.START_OBJECT) {
            throw new Refusal.Invalid("The body must be one JSON object.");
        }
        ObjectNode body = object();
        if (next() != null) {
            throw new Refusal.Invalid(
                    "Something stands after the end of the JSON object: "
                            + place(parser.currentTokenLocation()));
        }
        return body;
    }

    private ObjectNode object() {
        requireNotTooDeep();
        ObjectNode object = NODES.objectNode();
        while (next() != JsonToken.END_OBJECT) {
            String name = context().getCurrentName();
            if (object.has(name)) {
                throw refusal(here(), "This field was sent more than once.");
            }
            next();
            object.set(name, value());
        }
        return object;
    }

    private ArrayNode array() {
        requireNotTooDeep();
        ArrayNode array = NODES.arrayNode();
        while (next() != JsonToken.END_ARRAY) {
            array.add(value());
        }
        return array;
    }

    private void requireNotTooDeep() {
        if (context().getNestingDepth() > DEEPEST) {
            throw refusal(
                    around(), "This is nested too deeply: at most %d levels.".formatted(DEEPEST));
        }
    }

    private JsonNode value() {
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object();
            case START_ARRAY -> array();
            case VALUE_STRING -> NODES.textNode(plain());
            case VALUE_NUMBER_INT -> NODES.numberNode(read(JsonParser::getBigIntegerValue));
            case VALUE_NUMBER_FLOAT -> NODES.numberNode(finite());
            case VALUE_TRUE, VALUE_FALSE -> NODES.booleanNode(token == JsonToken.VALUE_TRUE);
            case VALUE_NULL ->
                    throw refusal(here(), "Nothing may be null; leave the field out instead.");
            case FIELD_NAME, END_OBJECT, END_ARRAY, VALUE_EMBEDDED_OBJECT, NOT_AVAILABLE ->
                    throw new IllegalStateException("no value begins with " + token);
        };
    }

    private String plain() {
        String text = read(JsonParser::getText);
        if (!Plain.isPlain(text)) {
            throw refusal(here(), "This text has characters that cannot be kept.");
        }
        return text;
    }

    private double finite() {
        double number = read(JsonParser::getDoubleValue);
        if (!Double.isFinite(number)) {
            throw refusal(here(), "This number is too large.");
        }
        return number;
    }

    @FunctionalInterface
    private interface Reading<T> {
        T from(JsonParser parser) throws IOException;
    }

    private <T> T read(Reading<T> reading) {
        try {
            return reading.from(parser);
        } catch (IOException e) {
            throw unreadable(e, here());
        }
    }

    /// The parser looks at a value's first characters together with the field's name: after the
    /// name, a fault is the field's own; elsewhere all that is known is what it lies in.
    private @Nullable JsonToken next() {
        try {
            return parser.nextToken();
        } catch (IOException e) {
            throw unreadable(e, parser.hasToken(JsonToken.FIELD_NAME) ? here() : around());
        }
    }

    private JsonStreamContext context() {
        return parser.getParsingContext();
    }

    private JsonPointer here() {
        return context().pathAsPointer();
    }

    private JsonPointer around() {
        return Optional.ofNullable(context().getParent())
                .map(JsonStreamContext::pathAsPointer)
                .orElse(JsonPointer.empty());
    }

    private Refusal unreadable(IOException e, JsonPointer field) {
        JsonLocation at =
                Optional.of(e)
                        .filter(JsonProcessingException.class::isInstance)
                        .map(JsonProcessingException.class::cast)
                        .map(JsonProcessingException::getLocation)
                        .orElse(parser.currentLocation());
        String what =
                e instanceof StreamConstraintsException
                        ? "A number or a name is too long: "
                        : "This is no JSON that can be read: ";
        return refusal(field, what + place(at));
    }

    private static String place(JsonLocation at) {
        return "line %d, column %d.".formatted(at.getLineNr(), at.getColumnNr());
    }

    private static Refusal refusal(JsonPointer field, String message) {
        return new Refusal.Invalid(nameOf(field), message);
    }
}
