package org.groundline.bank;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;

import java.io.IOException;
import java.io.Serial;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Map;

/// The JSON in which items are kept: decimals as texts, nothing unknown, nothing left out, nothing
/// null. What was written is read back equal, in any later version of the program: a component that
/// came later has a default for texts from before it.
public final class Frozen {
    private static final JsonNode NONE = JsonNodeFactory.instance.arrayNode();

    /// What components that came later were, in effect, before them; by the record that has them.
    private static final Map<String, Map<String, JsonNode>> LATER =
            Map.of(
                    "Key choice", Map.of("steps", NONE, "figures", NONE),
                    "Key number", Map.of("figures", NONE),
                    "mistake", Map.of("step", IntNode.valueOf(0)),
                    "Shown choice", Map.of("figures", NONE),
                    "Shown number", Map.of("signed", BooleanNode.TRUE, "figures", NONE));

    private static final JsonMapper JSON =
            JsonMapper.builder()
                    .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                    .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
                    .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                    .addModule(
                            new SimpleModule()
                                    .addSerializer(new DecimalWriter())
                                    .addSerializer(new BeliefWriter())
                                    .addDeserializer(BigDecimal.class, new DecimalReader()))
                    .build();

    private Frozen() {}

    public static String write(Shown shown) {
        return writeAs(Shown.class, shown);
    }

    public static String write(Key key) {
        return writeAs(Key.class, key);
    }

    /// @throws IllegalArgumentException if the text is not what [#write(Shown)] writes
    public static Shown readShown(String json) {
        return read(json, Shown.class);
    }

    /// @throws IllegalArgumentException if the text is not what [#write(Key)] writes
    public static Key readKey(String json) {
        return read(json, Key.class);
    }

    /// The decimal without an exponent in its text, so that writing and reading keep it equal.
    static BigDecimal plain(BigDecimal decimal) {
        return decimal.scale() < 0 ? decimal.setScale(0) : decimal;
    }

    private static <T> String writeAs(Class<T> type, T value) {
        try {
            return JSON.writerFor(type).writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static <T> T read(String json, Class<T> type) {
        try {
            return JSON.treeToValue(completed(JSON.readTree(json), type), type);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("not a frozen item: " + e.getOriginalMessage(), e);
        }
    }

    private static JsonNode completed(JsonNode item, Class<?> type) {
        complete(item, type.getSimpleName() + " " + item.path("kind").asText());
        item.path("mistakes").forEach(mistake -> complete(mistake, "mistake"));
        return item;
    }

    private static void complete(JsonNode written, String owner) {
        if (written instanceof ObjectNode components) {
            LATER.getOrDefault(owner, Map.of()).forEach(components::putIfAbsent);
        }
    }

    private static final class DecimalWriter extends StdSerializer<BigDecimal> {
        @Serial private static final long serialVersionUID = 1L;

        DecimalWriter() {
            super(BigDecimal.class);
        }

        @Override
        public void serialize(BigDecimal value, JsonGenerator out, SerializerProvider provider)
                throws IOException {
            out.writeString(value.toPlainString());
        }
    }

    private static final class DecimalReader extends StdDeserializer<BigDecimal> {
        @Serial private static final long serialVersionUID = 1L;

        DecimalReader() {
            super(BigDecimal.class);
        }

        @Override
        public BigDecimal deserialize(JsonParser in, DeserializationContext context)
                throws IOException {
            if (!in.hasToken(JsonToken.VALUE_STRING)) {
                return context.reportInputMismatch(this, "a decimal is kept as a text");
            }
            String text = in.getText();
            if (!text.matches("-?\\d+(\\.\\d+)?")) {
                return context.reportInputMismatch(this, "not a decimal: '%s'", text);
            }
            return new BigDecimal(text);
        }
    }
}
