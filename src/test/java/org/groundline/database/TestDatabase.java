package org.groundline.database;

import org.jooq.ExecuteListener;
import org.testcontainers.postgresql.PostgreSQLContainer;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/// A fresh, migrated database for a test, on the PostgreSQL that the run has chosen: the one given
/// by GROUNDLINE_DB_URL, a container where the property groundline.db is `container`, else the
/// embedded one. One server serves the whole run; each database is a copy of one migrated template.
/// What is missing fails; nothing is skipped.
public final class TestDatabase {
    private static final String TEMPLATE = "groundline_template";
    private static final AtomicInteger COUNT = new AtomicInteger();
    private static final Server SERVER = Server.chosen();

    static {
        createTemplate();
    }

    private TestDatabase() {}

    /// Which PostgreSQL the run uses.
    ///
    /// @param maintenance who may create databases; owns the tables
    /// @param serverUser the server's own role
    private record Server(Address maintenance, String serverUser, String serverPassword) {
        static Server chosen() {
            try {
                if (System.getenv("GROUNDLINE_DB_URL") != null) {
                    return given();
                }
                return "container".equals(System.getProperty("groundline.db"))
                        ? container()
                        : embedded();
            } catch (Exception e) {
                throw new IllegalStateException("the PostgreSQL of the tests did not start", e);
            }
        }

        private static Server given() {
            var owner =
                    new Address(
                            variable("GROUNDLINE_DB_URL"),
                            variable("GROUNDLINE_DB_OWNER_USER"),
                            variable("GROUNDLINE_DB_OWNER_PASSWORD"));
            return new Server(
                    owner, variable("GROUNDLINE_DB_USER"), variable("GROUNDLINE_DB_PASSWORD"));
        }

        private static Server embedded() throws Exception {
            Path folder = Files.createDirectories(Path.of("target", "test-postgres"));
            var postgres =
                    EmbeddedPostgres.start(
                            folder, Map.of("fsync", "off", "max_connections", "500"));
            Runtime.getRuntime().addShutdownHook(new Thread(() -> closeQuietly(postgres)));
            Address server = postgres.server();
            return new Server(postgres.superuser(), server.user(), server.password());
        }

        private static Server container() throws Exception {
            var container = new PostgreSQLContainer("postgres:15");
            container.start();
            var owner =
                    new Address(
                            container.getJdbcUrl(),
                            container.getUsername(),
                            container.getPassword());
            execute(owner, "create role groundline login password 'groundline'");
            return new Server(owner, "groundline", "groundline");
        }

        private static String variable(String name) {
            String value = System.getenv(name);
            if (value == null) {
                throw new IllegalStateException(
                        "GROUNDLINE_DB_URL is set, so " + name + " must be, too");
            }
            return value;
        }
    }

    /// Returns a new empty, migrated database, opened as the server's role.
    public static Database open(ExecuteListener... listeners) {
        return Database.open(asServer(create()), listeners);
    }

    /// Returns the name of a new empty, migrated database.
    public static String create() {
        String name =
                "groundline_test_%d_%d"
                        .formatted(ProcessHandle.current().pid(), COUNT.incrementAndGet());
        execute(SERVER.maintenance(), "create database " + name + " template " + TEMPLATE);
        return name;
    }

    /// Where the server's role reaches a database.
    public static Address asServer(String name) {
        return new Address(url(name), SERVER.serverUser(), SERVER.serverPassword());
    }

    /// Where the owner of the tables reaches a database.
    public static Address asOwner(String name) {
        return new Address(url(name), SERVER.maintenance().user(), SERVER.maintenance().password());
    }

    /// Returns the name of a new database without any table.
    static String createEmpty() {
        String name =
                "groundline_test_%d_%d"
                        .formatted(ProcessHandle.current().pid(), COUNT.incrementAndGet());
        execute(SERVER.maintenance(), "create database " + name);
        return name;
    }

    static String serverUser() {
        return SERVER.serverUser();
    }

    private static void createTemplate() {
        execute(SERVER.maintenance(), "drop database if exists " + TEMPLATE + " with (force)");
        execute(SERVER.maintenance(), "create database " + TEMPLATE);
        Migrations.apply(asOwner(TEMPLATE), SERVER.serverUser());
    }

    private static String url(String name) {
        return SERVER.maintenance().url().replaceFirst("/[^/?]*(\\?.*)?$", "/" + name);
    }

    static void execute(Address address, String text) {
        try (Connection connection = EmbeddedPostgres.connect(address);
                var statement = connection.createStatement()) {
            statement.execute(text);
        } catch (java.sql.SQLException e) {
            throw new IllegalStateException(text, e);
        }
    }

    private static void closeQuietly(EmbeddedPostgres postgres) {
        try {
            postgres.close();
        } catch (java.io.IOException e) {
            System.err.println(
                    "the embedded PostgreSQL of the tests did not stop: " + e.getMessage());
        }
    }
}
