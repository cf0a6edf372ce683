package org.groundline.demo;

import java.time.Instant;
import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.Queue;

/// What is going to happen, in the order of time; at one instant in the order it was entered. An
/// event may enter others, later than itself.
final class Agenda {
    private final SimulatedClock clock;
    private final Queue<Event> events =
            new PriorityQueue<>(Comparator.comparing(Event::at).thenComparing(Event::number));
    private long entered;

    Agenda(SimulatedClock clock) {
        this.clock = clock;
    }

    private record Event(Instant at, long number, Runnable deed) {}

    void enter(Instant at, Runnable deed) {
        events.add(new Event(at, entered++, deed));
    }

    /// Lets everything happen up to an instant; what lies after it never does.
    void runUntil(Instant end) {
        for (Event next = events.poll();
                next != null && !next.at().isAfter(end);
                next = events.poll()) {
            clock.moveTo(next.at());
            next.deed().run();
        }
        clock.moveTo(end);
    }
}
