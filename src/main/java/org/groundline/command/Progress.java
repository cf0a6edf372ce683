package org.groundline.command;

import org.jspecify.annotations.NullMarked;

import java.time.Duration;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/// Tells every few seconds how many of all are done, and at the end that all are.
@NullMarked
final class Progress {
    private static final long BETWEEN = Duration.ofSeconds(2).toNanos();

    private final int all;
    private final LongSupplier nanoTime;
    private final Consumer<String> told;
    private int done;
    private long last;

    Progress(int all, LongSupplier nanoTime, Consumer<String> told) {
        this.all = all;
        this.nanoTime = nanoTime;
        this.told = told;
        this.last = nanoTime.getAsLong();
    }

    void oneMore() {
        done++;
        long now = nanoTime.getAsLong();
        if (done == all || now - last >= BETWEEN) {
            last = now;
            told.accept("%,d of %,d".formatted(done, all));
        }
    }
}
