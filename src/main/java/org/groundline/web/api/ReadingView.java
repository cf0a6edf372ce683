package org.groundline.web.api;

import org.groundline.reading.Reading;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Whether a brief was read.
///
/// @param at when it was, as it is now or in an earlier version; absent where it never was
record ReadingView(String state, Optional<Instant> at) {
    static ReadingView of(Reading reading) {
        return switch (reading) {
            case Reading.Unread() -> new ReadingView("unread", Optional.empty());
            case Reading.Current(Instant at) -> new ReadingView("read", Optional.of(at));
            case Reading.Changed(Instant at) -> new ReadingView("changed", Optional.of(at));
        };
    }

    /// Of all briefs there are.
    record All(List<OfTopic> briefs) {
        static All of(Map<String, Reading> readings) {
            return new All(
                    readings.entrySet().stream()
                            .map(e -> new OfTopic(e.getKey(), ReadingView.of(e.getValue())))
                            .toList());
        }
    }

    record OfTopic(String topic, ReadingView reading) {}
}
