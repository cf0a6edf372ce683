package org.groundline.command;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;

import org.jspecify.annotations.NullMarked;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;

/// For whom a result is written: people or programs.
@NullMarked
enum OutputFormat {
    TEXT,
    JSON;

    private static final JsonMapper MAPPER =
            JsonMapper.builder()
                    .disable(MapperFeature.AUTO_DETECT_IS_GETTERS)
                    .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                    .enable(SerializationFeature.INDENT_OUTPUT)
                    .build();

    static String json(Object value) {
        try {
            return MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /// Writes the values one by one as the elements of one array, which then reads as [#json] of a
    /// list does; its end is written when it is closed.
    static SequenceWriter elements(Writer out) throws IOException {
        return MAPPER.writer()
                .without(SerializationFeature.FLUSH_AFTER_WRITE_VALUE)
                .without(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                .writeValuesAsArray(out);
    }

    static final class Reader implements ITypeConverter<OutputFormat> {
        @Override
        public OutputFormat convert(String word) {
            return switch (word) {
                case "text" -> TEXT;
                case "json" -> JSON;
                default -> throw new TypeConversionException("'" + word + "' is not text or json");
            };
        }
    }
}
