package org.groundline.command;

import org.jspecify.annotations.NullMarked;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/// `bank`: looks at a question bank without a server, and takes translations into it.
///
/// Exit codes of all its commands: 0 when the bank is sound, 1 when it has errors or the output
/// could not be written to its end, 2 for a wrong call, such as an unknown question.
@NullMarked
@Command(
        name = "bank",
        description = "Looks at a question bank without a server.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            BankCheckCommand.class,
            BankEvaluateCommand.class,
            BankSampleCommand.class,
            BankSheetCommand.class
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:the bank is sound",
            "1:the bank has errors, listed on standard error, or the output was not read to its end",
            "2:the call is wrong, for example an unknown question"
        })
public final class BankCommand {
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this.")
    @SuppressWarnings("UnusedVariable") // picocli reads it
    private boolean help;
}
