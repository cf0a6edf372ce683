package org.groundline.web.api;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;

import java.io.IOException;
import java.io.Serial;
import java.time.DateTimeException;
import java.util.NoSuchElementException;
import java.util.function.Function;

/// Reads a value that is spelled as a text in exactly one way.
final class SpelledReader<T> extends StdDeserializer<T> {
    @Serial private static final long serialVersionUID = 1L;

    private final String pattern;
    private final transient Function<String, T> spelled;

    SpelledReader(Class<T> type, Function<String, T> spelled) {
        this(type, "(?s).*", spelled);
    }

    SpelledReader(Class<T> type, String pattern, Function<String, T> spelled) {
        super(type);
        this.pattern = pattern;
        this.spelled = spelled;
    }

    @Override
    public T deserialize(JsonParser in, DeserializationContext context) throws IOException {
        if (!in.hasToken(JsonToken.VALUE_STRING) || !in.getText().matches(pattern)) {
            return context.reportInputMismatch(this, "spelled otherwise");
        }
        try {
            return spelled.apply(in.getText());
        } catch (DateTimeException | NoSuchElementException e) {
            return context.reportInputMismatch(this, "spelled otherwise");
        }
    }
}
