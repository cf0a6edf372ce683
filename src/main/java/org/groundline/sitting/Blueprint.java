package org.groundline.sitting;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/// The rules for a test of one module.
///
/// @param minutes time for the whole paper
/// @param topics how many items of each topic, by the topic's id
/// @param safetyCritical how many items of the paper are safety-critical at least
/// @param numericMost how many items are numeric at most
public record Blueprint(
        UUID id,
        Stakes stakes,
        String name,
        String module,
        int minutes,
        Map<String, Integer> topics,
        int safetyCritical,
        int numericMost) {
    public Blueprint {
        topics = Collections.unmodifiableMap(new TreeMap<>(topics));
    }

    /// How many items a paper has.
    public int items() {
        return topics.values().stream().mapToInt(Integer::intValue).sum();
    }
}
