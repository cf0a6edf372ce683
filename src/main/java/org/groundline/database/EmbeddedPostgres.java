package org.groundline.database;

import org.groundline.error.Refusal;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/// A PostgreSQL for those who brought none, kept in the data folder: durable, listening on this
/// machine only, asking everybody for a password.
///
/// States and what holds in each. *Held*: the folder's lock is ours, so no other Groundline runs
/// here; a server left behind by a killed one may still do, and is stopped. *Running*: the server
/// answers; its roles and database exist. *Closed*: it was told to stop and has stopped; then the
/// lock is given back.
public final class EmbeddedPostgres implements AutoCloseable {
    private static final String SUPERUSER = "postgres";
    private static final String OWNER = "groundline_owner";
    private static final String SERVER = "groundline";
    private static final String NAME = "groundline";
    private static final Duration START_WAIT = Duration.ofSeconds(60);

    private final PrivateFolder folder;
    private final PostgresBinaries binaries;
    private final Path cluster;
    private final int port;

    private EmbeddedPostgres(PrivateFolder folder, PostgresBinaries binaries, int port) {
        this.folder = folder;
        this.binaries = binaries;
        this.cluster = folder.path("cluster");
        this.port = port;
    }

    /// Starts the server on the data in a folder; makes a new cluster where there is none.
    ///
    /// @param path the data folder
    /// @param settings further settings of PostgreSQL; the durable ones cannot be overridden in
    ///   production
    /// @throws Refusal.Conflict if the folder is in use or belongs to another major of PostgreSQL
    public static EmbeddedPostgres start(Path path, Map<String, String> settings)
            throws IOException {
        PrivateFolder folder = PrivateFolder.hold(path.toAbsolutePath());
        try {
            var binaries = PostgresBinaries.unpackedIn(folder.path(""));
            var postgres = new EmbeddedPostgres(folder, binaries, freePort());
            postgres.stopLeftBehind();
            postgres.ensureCluster();
            postgres.launch(settings);
            postgres.ensureDatabase();
            return postgres;
        } catch (IOException | RuntimeException e) {
            folder.close();
            throw e;
        }
    }

    /// Who owns the tables; for migrations and backups.
    public Address owner() throws IOException {
        return new Address(url(NAME), OWNER, folder.secret("owner"));
    }

    /// The server's own role.
    public Address server() throws IOException {
        return new Address(url(NAME), SERVER, folder.secret("server"));
    }

    /// The superuser, for tests that make databases of their own.
    Address superuser() throws IOException {
        return new Address(url("postgres"), SUPERUSER, folder.secret("superuser"));
    }

    private String url(String database) {
        return "jdbc:postgresql://127.0.0.1:%d/%s".formatted(port, database);
    }

    private static int freePort() throws IOException {
        try (var socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    /// A server whose Groundline was killed lives on and holds the cluster.
    private void stopLeftBehind() throws IOException {
        if (Files.exists(cluster.resolve("postmaster.pid"))) {
            command(
                            binaries.program("pg_ctl"),
                            "stop",
                            "-D",
                            cluster.toString(),
                            "-m",
                            "fast",
                            "-w")
                    .run(false);
        }
    }

    private void ensureCluster() throws IOException {
        Path version = cluster.resolve("PG_VERSION");
        if (Files.exists(version)) {
            requireMajor(Files.readString(version).strip());
            return;
        }
        folder.secret("superuser");
        command(
                        binaries.program("initdb"),
                        "--pgdata=" + cluster,
                        "--username=" + SUPERUSER,
                        "--pwfile=" + folder.path("superuser.secret"),
                        "--auth=scram-sha-256",
                        "--encoding=UTF8",
                        "--locale=C",
                        "--locale-provider=builtin",
                        "--builtin-locale=C.UTF-8",
                        "--data-checksums")
                .run(true);
    }

    private static void requireMajor(String found) {
        if (!found.equals(String.valueOf(PostgresBinaries.MAJOR))) {
            throw new Refusal.Conflict(
                    "The data folder was made by PostgreSQL %s and this build carries %d. Back up with the older build and restore with this one."
                            .formatted(found, PostgresBinaries.MAJOR));
        }
    }

    private void launch(Map<String, String> settings) throws IOException {
        List<String> line =
                new ArrayList<>(
                        List.of(binaries.program("pg_ctl"), "start", "-D", cluster.toString()));
        line.addAll(List.of("-l", folder.path("postgres.log").toString(), "-w", "-t"));
        line.addAll(List.of(String.valueOf(START_WAIT.toSeconds()), "-o", options(settings)));
        command(line.toArray(String[]::new)).run(true);
    }

    private String options(Map<String, String> settings) {
        var all = new java.util.LinkedHashMap<String, String>();
        all.put("port", String.valueOf(port));
        all.put("listen_addresses", "127.0.0.1");
        all.put("unix_socket_directories", "");
        all.put("max_connections", "100");
        all.put("fsync", "on");
        all.put("full_page_writes", "on");
        all.put("synchronous_commit", "on");
        all.putAll(settings);
        var options = new StringBuilder();
        all.forEach(
                (name, value) ->
                        options.append(" -c ")
                                .append(name)
                                .append("='")
                                .append(value)
                                .append('\''));
        return options.toString().strip();
    }

    private void ensureDatabase() throws IOException {
        try (Connection connection = connect(superuser())) {
            ensureRole(connection, OWNER, folder.secret("owner"));
            ensureRole(connection, SERVER, folder.secret("server"));
            if (!exists(connection, "select 1 from pg_database where datname = '" + NAME + "'")) {
                execute(connection, "create database " + NAME + " owner " + OWNER);
                execute(connection, "revoke connect on database " + NAME + " from public");
                execute(connection, "grant connect on database " + NAME + " to " + SERVER);
            }
        } catch (SQLException e) {
            throw new IOException("the embedded database could not be made ready", e);
        }
    }

    private static void ensureRole(Connection connection, String role, String password)
            throws SQLException {
        if (!exists(connection, "select 1 from pg_roles where rolname = '" + role + "'")) {
            execute(connection, "create role " + role + " login password '" + password + "'");
        }
    }

    static Connection connect(Address address) throws SQLException {
        return DriverManager.getConnection(address.url(), address.user(), address.password());
    }

    private static boolean exists(Connection connection, String query) throws SQLException {
        try (var statement = connection.createStatement();
                var rows = statement.executeQuery(query)) {
            return rows.next();
        }
    }

    private static void execute(Connection connection, String text) throws SQLException {
        try (var statement = connection.createStatement()) {
            statement.execute(text);
        }
    }

    private Command command(String... line) {
        return new Command(List.of(line), folder.path("commands.log"));
    }

    /// Stops the server, waiting until it has, and gives the folder back.
    @Override
    public void close() throws IOException {
        command(binaries.program("pg_ctl"), "stop", "-D", cluster.toString(), "-m", "fast", "-w")
                .run(false);
        folder.close();
    }

    /// One of PostgreSQL's programs. They refuse to run as root, so on Linux root runs them in a
    /// user namespace of its own.
    private record Command(List<String> line, Path log) {
        void run(boolean mustSucceed) throws IOException {
            List<String> all = new ArrayList<>();
            if (isLinuxRoot()) {
                all.addAll(List.of("unshare", "-U"));
            }
            all.addAll(line);
            Process process =
                    new ProcessBuilder(all)
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()))
                            .start();
            int code = waitFor(process);
            if (mustSucceed && code != 0) {
                throw new IOException("%s ended with %d; see %s".formatted(line.get(0), code, log));
            }
        }

        private int waitFor(Process process) throws IOException {
            try {
                if (!process.waitFor(2 * START_WAIT.toSeconds(), TimeUnit.SECONDS)) {
                    process.destroyForcibly();
                    throw new IOException(line.get(0) + " did not end in time; see " + log);
                }
                return process.exitValue();
            } catch (InterruptedException e) {
                process.destroyForcibly();
                Thread.currentThread().interrupt();
                throw new IOException("interrupted while waiting for " + line.get(0), e);
            }
        }

        private static boolean isLinuxRoot() {
            return System.getProperty("os.name").equals("Linux")
                    && "root".equals(System.getProperty("user.name"));
        }
    }
}
