package org.groundline.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.error.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import java.util.Map;

/// The embedded server as production starts it.
class EmbeddedPostgresTest {
    @TempDir private Path folder;

    @Test
    void itIsDurableClosedToOthersAndHeldByOneServerAtATime() throws Exception {
        try (var postgres = EmbeddedPostgres.start(folder, Map.of());
                var database = Database.open(migrated(postgres))) {
            assertThat(ServerRole.undurable(database)).isEmpty();
            ServerRole.requireFit(database);
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                    .isEqualTo("rwx------");
            assertThat(Files.readString(folder.resolve("cluster/pg_hba.conf")))
                    .doesNotContainPattern("(?m)^[^#]*trust");
            assertThatThrownBy(() -> EmbeddedPostgres.start(folder, Map.of()))
                    .isInstanceOf(Refusal.Conflict.class)
                    .hasMessageContaining("in use by another running Groundline");
            assertNobodyGetsInWithoutThePassword(postgres);
        }
    }

    private static Address migrated(EmbeddedPostgres postgres) throws Exception {
        Migrations.apply(postgres.owner(), postgres.server().user());
        return postgres.server();
    }

    private static void assertNobodyGetsInWithoutThePassword(EmbeddedPostgres postgres)
            throws Exception {
        var guess = new Address(postgres.superuser().url(), "postgres", "postgres");
        assertThatThrownBy(() -> EmbeddedPostgres.connect(guess).close())
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("password authentication failed");
    }

    @Test
    void dataOfAnotherMajorIsRefused() throws Exception {
        Files.createDirectories(folder.resolve("cluster"));
        Files.writeString(folder.resolve("cluster/PG_VERSION"), "14\n");

        assertThatThrownBy(() -> EmbeddedPostgres.start(folder, Map.of()))
                .isInstanceOf(Refusal.Conflict.class)
                .hasMessageContaining("made by PostgreSQL 14");
    }
}
