package org.groundline.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;

import io.javalin.http.Context;

/// Writes answers: instants and days as ISO 8601 texts, what is absent left out, never null.
final class Json {
    static final String TYPE = "application/json";

    private static final JsonMapper WRITER =
            JsonMapper.builder()
                    .addModules(new JavaTimeModule(), new Jdk8Module())
                    .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
                    .serializationInclusion(JsonInclude.Include.NON_ABSENT)
                    .build();

    private Json() {}

    static void answer(Context ctx, int status, Object value) {
        answer(ctx, status, bytes(value));
    }

    static void answer(Context ctx, int status, byte[] json) {
        ctx.status(status).contentType(TYPE).result(json);
    }

    static byte[] bytes(Object value) {
        try {
            return WRITER.writeValueAsBytes(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an answer cannot be written: " + value.getClass(), e);
        }
    }
}
