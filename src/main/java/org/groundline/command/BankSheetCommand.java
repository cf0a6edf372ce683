package org.groundline.command;

import org.groundline.bank.BankFault;
import org.groundline.bank.BankLocation;
import org.groundline.bank.Questions;
import org.groundline.bank.translation.State;
import org.groundline.bank.translation.TakenSheet;
import org.groundline.error.Refusal;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;

/// `bank sheet`: writes the texts of a module beside their translation, and takes the filled sheet
/// back into the bank's folder.
@NullMarked
@Command(
        name = "sheet",
        description = {
            "Writes a bilingual sheet of a module (comma-separated, UTF-8), or takes a filled one back.",
            "In a filled sheet a translation counts as following the English unless its state still says stale."
        })
final class BankSheetCommand implements Callable<Integer> {
    @Mixin private BankOptions options = new BankOptions();

    @ArgGroup(multiplicity = "1")
    private Task task = new Task();

    /// One of the two.
    static final class Task {
        @ArgGroup(exclusive = false)
        private @Nullable Export export;

        @Option(
                names = "--take",
                required = true,
                paramLabel = "FILE",
                description = "Take this filled sheet into the folder given with --bank.")
        private @Nullable Path taken;
    }

    /// What to write, and where.
    static final class Export {
        @Option(
                names = "--language",
                required = true,
                paramLabel = "TAG",
                description = "The other language, in two letters such as de.")
        private String language = "";

        @Option(
                names = "--module",
                required = true,
                paramLabel = "ID",
                description = "The module, such as HUM.")
        private String module = "";

        @Option(
                names = "--output",
                paramLabel = "FILE",
                description = "Where to write the sheet; left out, standard output.")
        private @Nullable Path output;
    }

    /// What came of taking a sheet, for programs.
    record Outcome(String language, Map<String, Integer> states, Map<String, String> files) {}

    @Override
    public Integer call() throws Exception {
        try (BankLocation location = options.open()) {
            if (task.taken != null) {
                take(location, task.taken);
            } else if (task.export != null) {
                export(location, task.export);
            }
            return ExitCode.OK;
        } catch (BankFault fault) {
            options.complain(String.valueOf(fault.getMessage()));
            return ExitCode.SOFTWARE;
        } catch (Refusal refusal) {
            throw options.wrong(String.valueOf(refusal.getMessage()));
        }
    }

    private void export(BankLocation location, Export wish) throws IOException {
        String sheet =
                Questions.load(location.folder()).translations().sheet(wish.language, wish.module);
        if (wish.output == null) {
            options.printExactly(sheet);
        } else {
            Files.writeString(wish.output, sheet);
        }
    }

    private void take(BankLocation location, Path file) throws IOException {
        options.requireFolder("--take writes into the bank; say with --bank which folder");
        String name = String.valueOf(file.getFileName());
        TakenSheet taken = Questions.load(location.folder()).translations().take(text(file), name);
        for (Map.Entry<String, Optional<String>> change : taken.files().entrySet()) {
            write(location.folder().resolve(change.getKey()), change.getValue());
        }
        tell(taken);
    }

    private String text(Path file) throws IOException {
        try {
            return Files.readString(file);
        } catch (CharacterCodingException e) {
            throw options.wrong(file + " is not UTF-8 text; save the sheet in the encoding UTF-8");
        } catch (NoSuchFileException e) {
            throw options.wrong("there is no file " + file);
        }
    }

    private static void write(Path file, Optional<String> text) throws IOException {
        if (text.isPresent()) {
            Files.createDirectories(file.resolveSibling(""));
            Files.writeString(file, text.get());
        } else {
            Files.deleteIfExists(file);
        }
    }

    private void tell(TakenSheet taken) {
        Map<String, Integer> states = new TreeMap<>();
        for (State state : State.values()) {
            states.put(state.word(), taken.states().getOrDefault(state, 0));
        }
        Map<String, String> files = new TreeMap<>();
        taken.files().forEach((f, text) -> files.put(f, text.isPresent() ? "written" : "removed"));
        switch (options.format()) {
            case JSON ->
                    options.print(OutputFormat.json(new Outcome(taken.language(), states, files)));
            case TEXT -> {
                files.forEach((file, what) -> options.print(file + ": " + what));
                options.print(
                        "%s: %d current, %d stale, %d missing; %d files changed"
                                .formatted(
                                        taken.language(),
                                        states.get("current"),
                                        states.get("stale"),
                                        states.get("missing"),
                                        files.size()));
            }
        }
    }
}
