package org.groundline.sitting;

import org.groundline.database.Database;
import org.groundline.database.SchoolId;
import org.groundline.error.Refusal;
import org.groundline.sitting.WaitingAnswer.AnswerId;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/// Commits the answers that wait, of all schools, in one transaction after the other. An answer
/// never waits for company: whatever came while the last commit ran goes into the next. Each is
/// acknowledged only after its commit.
public final class AnswerWriter implements AutoCloseable {
    private static final int WAITING_AT_MOST = 4_096;
    private static final int TOGETHER_AT_MOST = 256;
    private static final int GLANCE_MILLIS = 50;

    private final Database database;
    private final BlockingQueue<WaitingAnswer> waiting = new ArrayBlockingQueue<>(WAITING_AT_MOST);
    private final Thread thread;
    private volatile boolean closing;

    private AnswerWriter(Database database) {
        this.database = database;
        this.thread = Thread.ofPlatform().name("answer-writer").unstarted(this::run);
    }

    /// Starts the writer's thread.
    public static AnswerWriter start(Database database) {
        var writer = new AnswerWriter(database);
        writer.thread.start();
        return writer;
    }

    /// Hands an answer over.
    ///
    /// @throws Refusal.Busy if too many wait already, or the server is stopping
    CompletableFuture<Boolean> write(WaitingAnswer answer) {
        if (closing || !waiting.offer(answer)) {
            throw new Refusal.Busy(
                    "The server cannot save this at the moment. Nothing is lost; it is tried again.");
        }
        return answer.kept();
    }

    private void run() {
        List<WaitingAnswer> batch = new ArrayList<>(TOGETHER_AT_MOST);
        while (!closing || !waiting.isEmpty()) {
            takeInto(batch);
            if (!batch.isEmpty()) {
                commit(batch);
                batch.clear();
            }
        }
    }

    /// Takes what waits, at once where anything does; looks up now and then to see whether it is
    /// time to stop.
    private void takeInto(List<WaitingAnswer> batch) {
        try {
            WaitingAnswer first = waiting.poll(GLANCE_MILLIS, TimeUnit.MILLISECONDS);
            if (first != null) {
                batch.add(first);
                waiting.drainTo(batch, TOGETHER_AT_MOST - 1);
            }
        } catch (InterruptedException e) {
            closing = true;
        }
    }

    private void commit(List<WaitingAnswer> batch) {
        try {
            Set<AnswerId> kept = insert(batch);
            batch.forEach(w -> w.kept().complete(kept.remove(w.id())));
        } catch (RuntimeException e) {
            commitSingly(batch, e);
        }
    }

    /// One answer that the database rejects must not take the others with it.
    private void commitSingly(List<WaitingAnswer> batch, RuntimeException together) {
        if (batch.size() == 1) {
            batch.get(0).kept().completeExceptionally(together);
            return;
        }
        batch.forEach(w -> commit(List.of(w)));
    }

    private Set<AnswerId> insert(List<WaitingAnswer> batch) {
        List<SchoolId> schools = batch.stream().map(WaitingAnswer::school).distinct().toList();
        return database.inSchools(schools, tx -> new AnswerRepository(tx).insert(batch));
    }

    /// Commits what waits, then stops.
    @Override
    public void close() {
        closing = true;
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
