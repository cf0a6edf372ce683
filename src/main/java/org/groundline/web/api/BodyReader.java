package org.groundline.web.api;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;

import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;

import org.groundline.error.Refusal;

import java.lang.reflect.RecordComponent;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
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
        JsonNode body = BodyTree.read(decode(ctx.bodyAsBytes()));
        requireFields(body, type);
        return bind(body, type);
    }

    private static void requireJson(@org.jspecify.annotations.Nullable String contentType) {
        String type = String.valueOf(contentType).replace(" ", "").toLowerCase(Locale.ROOT);
        if (!Set.of("application/json", "application/json;charset=utf-8").contains(type)) {
            throw new HttpResponseException(
                    UNSUPPORTED_MEDIA_TYPE, "Send the body as application/json.", Map.of());
        }
    }

    private static String decode(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            throw new Refusal.Invalid("The body is not encoded in UTF-8.");
        }
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
            throw new Refusal.Invalid(
                    BodyTree.nameOf(pointer(e)),
                    "This field is not of the kind that is asked for.");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree cannot be walked", e);
        }
    }

    private static JsonPointer pointer(JsonMappingException e) {
        JsonPointer pointer = JsonPointer.empty();
        for (JsonMappingException.Reference step : e.getPath()) {
            pointer =
                    step.getFieldName() == null
                            ? pointer.appendIndex(step.getIndex())
                            : pointer.appendProperty(step.getFieldName());
        }
        return pointer;
    }
}
