package org.groundline.bank;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;

import java.io.IOException;
import java.io.Serial;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/// Writes beliefs from memory. A key with its slips carries a dozen of them, always the few of its
/// bank, and their texts are most of what freezing an item has to write.
final class BeliefWriter extends StdSerializer<Belief> {
    @Serial private static final long serialVersionUID = 1L;
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Map<Belief, String> WRITTEN = new ConcurrentHashMap<>();

    BeliefWriter() {
        super(Belief.class);
    }

    @Override
    public void serialize(Belief belief, JsonGenerator out, SerializerProvider provider)
            throws IOException {
        out.writeRawValue(WRITTEN.computeIfAbsent(belief, BeliefWriter::write));
    }

    private static String write(Belief belief) {
        try {
            return JSON.writeValueAsString(belief);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }
}
