package org.groundline.web.api;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.type.LogicalType;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;

import org.groundline.web.request.Form;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/// JSON without goodwill: a number is no text, a text no number, 1.0 no whole number, and an id, an
/// instant or a day is spelled in the one way that the document gives.
final class StrictJson {
    private static final int LONGEST_NUMBER = 40;
    private static final int LONGEST_NAME = 100;

    static final JsonMapper MAPPER = mapper();

    private StrictJson() {}

    private static JsonMapper mapper() {
        JsonMapper mapper =
                JsonMapper.builder(factory())
                        .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                        .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                        .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                        .addModules(new Jdk8Module(), texts())
                        .build();
        for (CoercionInputShape number :
                new CoercionInputShape[] {
                    CoercionInputShape.Integer, CoercionInputShape.Float, CoercionInputShape.Boolean
                }) {
            mapper.coercionConfigFor(LogicalType.Textual).setCoercion(number, CoercionAction.Fail);
        }
        return mapper;
    }

    private static JsonFactory factory() {
        return JsonFactory.builder()
                .streamReadConstraints(
                        StreamReadConstraints.builder()
                                .maxNumberLength(LONGEST_NUMBER)
                                .maxNameLength(LONGEST_NAME)
                                .build())
                .build();
    }

    private static SimpleModule texts() {
        return new SimpleModule()
                .addDeserializer(
                        UUID.class,
                        new SpelledReader<>(UUID.class, text -> Form.uuid(text).orElseThrow()))
                .addDeserializer(
                        Instant.class,
                        new SpelledReader<>(
                                Instant.class,
                                "\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d{1,9})?Z",
                                Instant::parse))
                .addDeserializer(
                        LocalDate.class,
                        new SpelledReader<>(
                                LocalDate.class, "\\d{4}-\\d\\d-\\d\\d", LocalDate::parse));
    }
}
