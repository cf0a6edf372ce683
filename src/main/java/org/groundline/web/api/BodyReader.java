package org.groundline.web.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;

import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;

import org.groundline.error.Refusal;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/// Reads the body of a request into its record: every field by its name and type, nothing unknown,
/// nothing twice, nothing null, nothing after the end. An optional field may be left out. What is
/// wrong is refused by the name of the field.
final class BodyReader {
    private static final int UNSUPPORTED_MEDIA_TYPE = 415;

    private BodyReader() {}

    /// @throws Refusal.Invalid if the body is not what the record says
    static <T extends Record> T read(Context ctx, Class<T> type) {
        requireJson(ctx.contentType());
        JsonNode body = parse(ctx.bodyAsBytes());
        requireFields(body, type);
        Plain.require(body);
        return bind(body, type);
    }

    private static void requireJson(@org.jspecify.annotations.Nullable String contentType) {
        String type = String.valueOf(contentType).replace(" ", "").toLowerCase(Locale.ROOT);
        if (!Set.of("application/json", "application/json;charset=utf-8").contains(type)) {
            throw new HttpResponseException(
                    UNSUPPORTED_MEDIA_TYPE, "Send the body as application/json.", Map.of());
        }
    }

    private static JsonNode parse(byte[] bytes) {
        try {
            JsonNode body = StrictJson.MAPPER.readTree(bytes);
            if (!body.isObject()) {
                throw new Refusal.Invalid("The body must be one JSON object.");
            }
            return body;
        } catch (StreamConstraintsException e) {
            throw new Refusal.Invalid(
                    "The body is nested too deeply, or a number or a name in it is too long.");
        } catch (JsonProcessingException e) {
            throw unreadable(e);
        } catch (IOException e) {
            throw new Refusal.Invalid("The body is not encoded in UTF-8.");
        }
    }

    private static Refusal unreadable(JsonProcessingException e) {
        if (StrictJson.duplicate(e).isPresent()) {
            return new Refusal.Invalid(
                    StrictJson.duplicate(e).get(), "This field was sent more than once.");
        }
        return new Refusal.Invalid(
                Optional.ofNullable(e.getLocation())
                        .map(
                                at ->
                                        "The body is no JSON that can be read: line %d, column %d."
                                                .formatted(at.getLineNr(), at.getColumnNr()))
                        .orElse("The body is no JSON that can be read."));
    }

    private static void requireFields(JsonNode body, Class<? extends Record> type) {
        Map<String, RecordComponent> known =
                Arrays.stream(type.getRecordComponents())
                        .collect(Collectors.toMap(RecordComponent::getName, c -> c));
        body.fieldNames()
                .forEachRemaining(
                        name -> require(known.containsKey(name), name, "This field is unknown."));
        known.forEach(
                (name, component) ->
                        require(
                                body.has(name) || component.getType() == Optional.class,
                                name,
                                "This field is missing."));
    }

    private static void require(boolean holds, String field, String otherwise) {
        if (!holds) {
            throw new Refusal.Invalid(field.substring(0, Math.min(64, field.length())), otherwise);
        }
    }

    private static <T> T bind(JsonNode body, Class<T> type) {
        try {
            return StrictJson.MAPPER.treeToValue(body, type);
        } catch (JsonMappingException e) {
            String field =
                    e.getPath().isEmpty() ? "" : String.valueOf(e.getPath().get(0).getFieldName());
            throw new Refusal.Invalid(field, "This field is not of the kind that is asked for.");
        } catch (JsonProcessingException e) {
            throw unreadable(e);
        }
    }
}
