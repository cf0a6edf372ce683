package org.groundline.demo;

import java.time.Instant;
import java.time.InstantSource;

/// A clock that stands until it is moved, and only moves forward.
final class SimulatedClock implements InstantSource {
    private volatile Instant now;

    SimulatedClock(Instant start) {
        this.now = start;
    }

    @Override
    public Instant instant() {
        return now;
    }

    void moveTo(Instant later) {
        if (later.isBefore(now)) {
            throw new IllegalArgumentException("it is %s, %s has passed".formatted(now, later));
        }
        now = later;
    }
}
