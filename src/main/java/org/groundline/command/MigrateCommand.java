package org.groundline.command;

import org.groundline.database.Migrations;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

import java.util.concurrent.Callable;

/// Brings an own PostgreSQL to the schema of this program. The embedded one is brought there by
/// `serve`.
@Command(
        name = "migrate",
        mixinStandardHelpOptions = true,
        description = {
            "Brings the PostgreSQL of GROUNDLINE_DB_URL to the schema of this program.",
            "Needs GROUNDLINE_DB_OWNER_USER and _PASSWORD, and GROUNDLINE_DB_USER: the role that gets the server's rights."
        })
final class MigrateCommand implements Callable<Integer> {
    @Spec private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        Settings settings = Settings.of(System.getenv());
        int applied = Migrations.apply(settings.ownerAt(), settings.serverAt().user());
        spec.commandLine().getOut().printf("%d migrations applied%n", applied);
        return 0;
    }
}
