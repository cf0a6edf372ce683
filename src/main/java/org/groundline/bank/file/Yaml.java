package org.groundline.bank.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// A node of a bank file and the line it begins on, counted from 1. A scalar is always text: what
/// it means is decided by whoever reads it, so `no`, `1.50` and `2024` stay as they were written.
public sealed interface Yaml {
    int line();

    record Text(String value, int line) implements Yaml {}

    record Items(List<Yaml> items, int line) implements Yaml {
        public Items {
            items = List.copyOf(items);
        }
    }

    /// A mapping in the author's order.
    record Fields(Map<String, Field> fields, int line) implements Yaml {
        public Fields {
            fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
        }
    }

    /// One key of a mapping with the line of the key.
    record Field(String key, int line, Yaml value) {}
}
