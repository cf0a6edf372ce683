package org.groundline.command;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/// The command line: what stands before each command, and what every failure looks like.
///
/// Exit codes: 0 done · 1 the work found faults, or could not be done as things stand · 2 the
/// command itself is not understood.
@Command(
        name = "groundline",
        mixinStandardHelpOptions = true,
        version = "Groundline 0.1.0",
        description = "Ground-school theory tests and course records for free-flight schools.",
        subcommands = {
            ServeCommand.class,
            MigrateCommand.class,
            BankCommand.class,
            TheoryCommand.class,
            DaylightCommand.class,
            BenchCommand.class
        })
public final class GroundlineCommand implements Runnable {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec = CommandLine.Model.CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /// Carries a command line out and returns its exit code. Refusals are printed as they are, for
    /// the person who typed the command; other failures with what the program knows about them.
    public static int execute(String... args) {
        return new CommandLine(new GroundlineCommand())
                .setExecutionExceptionHandler(
                        (e, line, parsed) -> {
                            line.getErr().println("groundline: " + String.valueOf(e.getMessage()));
                            if (!(e instanceof org.groundline.error.Refusal)) {
                                e.printStackTrace(line.getErr());
                            }
                            return 1;
                        })
                .execute(args);
    }
}
