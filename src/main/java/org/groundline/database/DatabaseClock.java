package org.groundline.database;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.OffsetDateTime;
import java.util.Objects;

/// This machine's clock, disciplined to the database's, so that several servers agree on a
/// deadline. The offset is measured by [#measure], which the server calls at start and each minute.
public final class DatabaseClock implements InstantSource {
    /// Above this offset the machine's clock is not to be trusted with a counted test.
    public static final Duration TOLERANCE = Duration.ofSeconds(1);

    private final InstantSource machine;
    private volatile Duration offset = Duration.ZERO;

    public DatabaseClock(InstantSource machine) {
        this.machine = machine;
    }

    /// Measures how far the database's clock is ahead of this machine's, halving the time the
    /// question took.
    public void measure(Database database) {
        Instant before = machine.instant();
        var answer =
                database.outsideSchools(
                        sql -> sql.fetchValue("select clock_timestamp()", new Object[0]));
        Instant after = machine.instant();
        Instant there = ((OffsetDateTime) Objects.requireNonNull(answer)).toInstant();
        Instant middle = before.plus(Duration.between(before, after).dividedBy(2));
        offset = Duration.between(middle, there);
    }

    /// Whether the two clocks agree well enough for a test that counts.
    public boolean trustworthy() {
        return offset.abs().compareTo(TOLERANCE) <= 0;
    }

    /// How far the database's clock is ahead.
    public Duration offset() {
        return offset;
    }

    @Override
    public Instant instant() {
        return machine.instant().plus(offset);
    }
}
