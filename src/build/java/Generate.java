import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.resolve.DirectoryCodeResolver;
import gg.jte.runtime.Constants;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;

import org.flywaydb.core.Flyway;
import org.jooq.codegen.GenerationTool;
import org.jooq.meta.jaxb.Configuration;
import org.jooq.meta.jaxb.Database;
import org.jooq.meta.jaxb.ForcedType;
import org.jooq.meta.jaxb.Jdbc;
import org.jooq.meta.jaxb.Logging;
import org.jooq.meta.jaxb.Target;
import org.slf4j.LoggerFactory;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/// Writes the sources that the build derives: jOOQ's classes from migrations/ applied to a
/// throw-away PostgreSQL, and Java from the page templates. Each is skipped when what it comes from
/// has not changed.
class Generate {
    private static final String PACKAGE = "org.groundline.database.schema";

    public static void main(String[] args) throws Exception {
        System.setProperty("org.jooq.no-logo", "true");
        System.setProperty("org.jooq.no-tips", "true");
        ((Logger) LoggerFactory.getLogger(Logger.ROOT_LOGGER_NAME)).setLevel(Level.ERROR);
        Path base = Path.of(args[0]);
        Path out = Path.of(args[1]);
        Path self = base.resolve("src/build/java/Generate.java");
        Path migrations = base.resolve("migrations");
        Path templates = base.resolve("src/main/jte");
        ifChanged(
                out.resolve("jooq.stamp"),
                List.of(migrations, self),
                () -> tables(migrations, out));
        ifChanged(out.resolve("jte.stamp"), List.of(templates, self), () -> pages(templates, out));
    }

    private interface Step {
        void run() throws Exception;
    }

    private static void ifChanged(Path stamp, List<Path> inputs, Step step) throws Exception {
        String now = hash(inputs);
        if (Files.exists(stamp) && Files.readString(stamp).equals(now)) {
            return;
        }
        step.run();
        Files.createDirectories(stamp.getParent());
        Files.writeString(stamp, now);
    }

    private static String hash(List<Path> inputs) throws Exception {
        var sha = MessageDigest.getInstance("SHA-256");
        for (Path input : inputs) {
            try (var files = Files.walk(input)) {
                for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                    sha.update(file.toString().getBytes(StandardCharsets.UTF_8));
                    sha.update(Files.readAllBytes(file));
                }
            }
        }
        return HexFormat.of().formatHex(sha.digest());
    }

    private static void pages(Path templates, Path out) throws IOException {
        Files.createDirectories(out);
        TemplateEngine.create(
                        new DirectoryCodeResolver(templates),
                        out,
                        ContentType.Html,
                        null,
                        Constants.PACKAGE_NAME_PRECOMPILED)
                .generateAll();
    }

    private static void tables(Path migrations, Path out) throws Exception {
        try (var postgres = EmbeddedPostgres.start()) {
            try (var connection = postgres.getPostgresDatabase().getConnection();
                    var statement = connection.createStatement()) {
                statement.execute("create role groundline");
            }
            Flyway.configure()
                    .dataSource(postgres.getPostgresDatabase())
                    .placeholders(Map.of("server_role", "groundline"))
                    .locations("filesystem:" + migrations)
                    .load()
                    .migrate();
            generate(postgres.getJdbcUrl("postgres", "postgres"), out);
        }
    }

    private static void generate(String url, Path out) throws Exception {
        var database =
                new Database()
                        .withInputSchema("public")
                        .withExcludes("flyway_schema_history")
                        .withOutputSchemaToDefault(true)
                        .withForcedTypes(
                                new ForcedType()
                                        .withName("INSTANT")
                                        .withIncludeTypes("timestamptz"));
        var generate =
                new org.jooq.meta.jaxb.Generate()
                        .withRecords(true)
                        .withPojos(false)
                        .withRoutines(false)
                        .withGeneratedAnnotation(true)
                        .withImplicitJoinPathsToOne(false)
                        .withImplicitJoinPathsToMany(false)
                        .withComments(false);
        GenerationTool.generate(
                new Configuration()
                        .withLogging(Logging.WARN)
                        .withJdbc(new Jdbc().withUrl(url))
                        .withGenerator(
                                new org.jooq.meta.jaxb.Generator()
                                        .withDatabase(database)
                                        .withGenerate(generate)
                                        .withTarget(
                                                new Target()
                                                        .withPackageName(PACKAGE)
                                                        .withDirectory(out.toString()))));
    }
}
