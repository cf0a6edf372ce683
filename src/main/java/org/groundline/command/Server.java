package org.groundline.command;

import org.groundline.bank.Questions;
import org.groundline.database.Address;
import org.groundline.database.Database;
import org.groundline.database.DatabaseClock;
import org.groundline.database.EmbeddedPostgres;
import org.groundline.database.Migrations;
import org.groundline.database.ServerRole;
import org.groundline.database.Statistics;
import org.groundline.ledger.Foundation;
import org.groundline.school.School;
import org.groundline.sitting.AnswerWriter;
import org.groundline.web.Doors;
import org.groundline.web.Readiness;
import org.groundline.web.WebServer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import java.io.IOException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/// The whole server: what was started first is stopped last, so that no answer on its way is cut
/// off.
final class Server implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Server.class);
    private static final int OVERDUE_SECONDS = 10;
    private static final int CLOCK_SECONDS = 60;
    private static final int STATISTICS_SECONDS = 10;

    private final Deque<AutoCloseable> running = new ArrayDeque<>();

    /// What a server is started with.
    ///
    /// @param data where the embedded database lies
    record Start(Settings settings, Path data, Questions bank) {}

    /// Opens the database and brings it to the schema of this program, if it is the embedded one.
    Doors open(Start start) throws IOException {
        Database database =
                start.settings().external() ? external(start.settings()) : embedded(start.data());
        ServerRole.requireFit(database);
        var clock = new DatabaseClock(InstantSource.system());
        clock.measure(database);
        AnswerWriter writer = keep(AnswerWriter.start(database));
        List<String> undurable = ServerRole.undurable(database);
        readiness = new Readiness(() -> reasons(clock, undurable));
        Doors doors =
                Doors.on(Foundation.on(database, clock), start.bank(), writer, readiness::holds);
        jobs = () -> keepTime(clock, database, doors);
        return doors;
    }

    private Readiness readiness = new Readiness(List::of);
    private Runnable jobs = () -> {};
    private Runnable analyse = () -> {};
    private Runnable analyseNew = () -> {};

    /// Renews the statistics that the embedded database plans its queries by, as its own job does
    /// each minute. A given PostgreSQL belongs to somebody else and is left to its job.
    void analyse() {
        analyse.run();
    }

    private Database embedded(Path data) throws IOException {
        EmbeddedPostgres postgres = keep(EmbeddedPostgres.start(data, Map.of()));
        Address server = postgres.server();
        Address owner = postgres.owner();
        Migrations.apply(owner, server.user());
        Database database = keep(Database.open(server));
        analyse = () -> Statistics.renew(owner);
        analyseNew = () -> Statistics.gatherMissing(database, owner);
        return database;
    }

    private Database external(Settings settings) {
        Migrations.requireApplied(settings.serverAt());
        return keep(Database.open(settings.serverAt()));
    }

    private static List<String> reasons(DatabaseClock clock, List<String> undurable) {
        List<String> reasons = new ArrayList<>();
        if (!clock.trustworthy()) {
            reasons.add(
                    "This machine's clock differs from the database's by " + clock.offset() + ".");
        }
        for (String setting : undurable) {
            reasons.add(
                    "PostgreSQL's "
                            + setting
                            + " is off: a crash may lose answers that were acknowledged.");
        }
        return reasons;
    }

    private void keepTime(DatabaseClock clock, Database database, Doors doors) {
        ScheduledExecutorService jobs =
                Executors.newSingleThreadScheduledExecutor(
                        Thread.ofVirtual().name("jobs").factory());
        running.push(jobs::close);
        jobs.scheduleWithFixedDelay(
                logged(() -> clock.measure(database)),
                CLOCK_SECONDS,
                CLOCK_SECONDS,
                TimeUnit.SECONDS);
        jobs.scheduleWithFixedDelay(
                logged(() -> closeOverdue(doors)),
                OVERDUE_SECONDS,
                OVERDUE_SECONDS,
                TimeUnit.SECONDS);
        jobs.scheduleWithFixedDelay(logged(analyseNew), 0, STATISTICS_SECONDS, TimeUnit.SECONDS);
    }

    /// A job that fails is told about and tried again at its next time; nobody else would see it.
    private static Runnable logged(Runnable job) {
        return () -> {
            try {
                job.run();
            } catch (RuntimeException e) {
                LOG.error("a job failed and will be tried again", e);
            }
        };
    }

    private static void closeOverdue(Doors doors) {
        for (School school : doors.schools().listSchools()) {
            doors.sittings().closeOverdue(school.id());
        }
    }

    /// Starts the jobs and begins to answer; returns the port.
    int listen(Doors doors, String host, int port) {
        jobs.run();
        return keep(WebServer.start(doors, readiness, host, port)).port();
    }

    private <T extends AutoCloseable> T keep(T part) {
        running.push(part);
        return part;
    }

    @Override
    public void close() {
        while (!running.isEmpty()) {
            try {
                running.pop().close();
            } catch (Exception e) {
                LOG.error("a part of the server did not stop cleanly", e);
            }
        }
    }
}
