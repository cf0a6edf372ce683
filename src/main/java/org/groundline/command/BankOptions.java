package org.groundline.command;

import org.groundline.bank.BankFault;
import org.groundline.bank.BankLocation;
import org.groundline.bank.Questions;
import org.groundline.error.Refusal;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Consumer;

/// The options that all bank commands share, and what they have in common: where the bank is, how
/// to write, how to fail.
@NullMarked
final class BankOptions {
    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec command;

    @Option(
            names = "--bank",
            paramLabel = "DIR",
            description = "The bank's folder; left out, the bank that comes with the program.")
    private @Nullable Path folder;

    @Option(
            names = "--format",
            paramLabel = "text|json",
            converter = OutputFormat.Reader.class,
            description = "How to write the result; left out, text.")
    private OutputFormat format = OutputFormat.TEXT;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this.")
    @SuppressWarnings("UnusedVariable") // picocli reads it
    private boolean help;

    OutputFormat format() {
        return format;
    }

    void print(String text) {
        commandLine().getOut().println(text);
        commandLine().getOut().flush();
    }

    /// A text with line ends of its own.
    void printExactly(String text) {
        commandLine().getOut().print(text);
        commandLine().getOut().flush();
    }

    /// For a command that writes into the bank, which it cannot do inside the program.
    void requireFolder(String otherwise) {
        if (folder == null) {
            throw wrong(otherwise);
        }
    }

    void complain(String text) {
        commandLine().getErr().println(text);
        commandLine().getErr().flush();
    }

    /// For a command that prints thousands of parts.
    LongOutput longOutput() {
        return new LongOutput(commandLine().getOut());
    }

    /// A wrong call, told with the command's usage.
    ParameterException wrong(String text) {
        return new ParameterException(commandLine(), text);
    }

    BankLocation open() throws IOException {
        return folder == null ? BankLocation.shipped() : BankLocation.at(folder);
    }

    /// Hands the loaded bank to the command, and turns what can go wrong into an exit code.
    int withQuestions(Consumer<Questions> use) throws IOException {
        try (BankLocation location = open()) {
            use.accept(Questions.load(location.folder()));
            return CommandLine.ExitCode.OK;
        } catch (BankFault fault) {
            complain(String.valueOf(fault.getMessage()));
            return CommandLine.ExitCode.SOFTWARE;
        } catch (Refusal refusal) {
            throw wrong(String.valueOf(refusal.getMessage()));
        } catch (LongOutput.Ended ended) {
            ended.trouble().ifPresent(this::complain);
            return CommandLine.ExitCode.SOFTWARE;
        }
    }

    private CommandLine commandLine() {
        if (command == null) {
            throw new IllegalStateException("options outside a command");
        }
        return command.commandLine();
    }
}
