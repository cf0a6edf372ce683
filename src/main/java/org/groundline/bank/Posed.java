package org.groundline.bank;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/// A question as put to one student: what they may see, and what only marking may see.
///
/// @param drawn the drawn values as printed, by name; empty for a fixed question
public record Posed(Shown shown, Key key, Map<String, String> drawn) {
    public Posed {
        drawn = Collections.unmodifiableMap(new LinkedHashMap<>(drawn));
    }
}
