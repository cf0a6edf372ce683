package org.groundline.command;

import org.groundline.error.Refusal;
import org.groundline.formulary.Evaluation;
import org.groundline.formulary.Formulary;
import org.groundline.formulary.Input;
import org.groundline.formulary.Quantity;
import org.groundline.measure.Rounding;
import org.groundline.measure.Units;
import org.jspecify.annotations.NullMarked;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;

/// `theory`: any quantity of flight theory for given values.
@NullMarked
@Command(
        name = "theory",
        mixinStandardHelpOptions = true,
        description = {
            "Computes a quantity of flight theory; `theory list` shows which there are.",
            "Theory only: the wing's manual, local rules and a licensed instructor come first."
        })
final class TheoryCommand implements Callable<Integer> {
    private static final int DIGITS = 6;

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "NAME", description = "The quantity, such as glide-distance, or list.")
    private String name = "";

    @Option(
            names = "--given",
            paramLabel = "name=value",
            split = ",",
            description =
                    "All values, with a decimal point: --given \"height=600m,ground-speed=23km/h,…\".")
    private Map<String, String> given = new LinkedHashMap<>();

    @Option(
            names = "--format",
            paramLabel = "text|json",
            converter = OutputFormat.Reader.class,
            description = "How to write the result; left out, text.")
    private OutputFormat format = OutputFormat.TEXT;

    /// A quantity as JSON.
    record Entry(
            String name, String question, Map<String, String> inputs, String unit, String source) {
        static Entry of(Quantity quantity) {
            Map<String, String> inputs = new LinkedHashMap<>();
            quantity.inputs().forEach(input -> inputs.put(input.name(), input.unit().symbol()));
            return new Entry(
                    quantity.name(),
                    quantity.question(),
                    inputs,
                    quantity.unit().symbol(),
                    quantity.source());
        }
    }

    @Override
    public Integer call() {
        try {
            if (name.equals("list")) {
                list();
            } else {
                print(Formulary.evaluate(name, given));
            }
            return 0;
        } catch (Refusal refusal) {
            throw new ParameterException(spec.commandLine(), String.valueOf(refusal.getMessage()));
        }
    }

    private void list() {
        switch (format) {
            case JSON ->
                    out().println(
                                    OutputFormat.json(
                                            Formulary.list().stream().map(Entry::of).toList()));
            case TEXT -> Formulary.list().forEach(this::describe);
        }
        out().flush();
    }

    private void describe(Quantity quantity) {
        out().println(quantity.name() + ": " + quantity.question());
        out().println(
                        "    takes "
                                + String.join(
                                        ", ",
                                        quantity.inputs().stream()
                                                .map(TheoryCommand::told)
                                                .toList()));
        out().println("    gives " + quantity.unit() + "; " + quantity.source());
    }

    private static String told(Input input) {
        return "%s (%s)".formatted(input.name(), input.unit());
    }

    private void print(Evaluation evaluation) {
        switch (format) {
            case JSON -> out().println(OutputFormat.json(evaluation));
            case TEXT -> {
                evaluation.given().forEach((input, read) -> out().println(input + ": " + read));
                out().println(
                                name
                                        + ": "
                                        + Units.get(evaluation.unit())
                                                .print(
                                                        Rounding.significant(
                                                                evaluation.value(), DIGITS)));
                evaluation.warnings().forEach(warning -> out().println("warning: " + warning));
                out().println("source: " + evaluation.source());
            }
        }
        out().flush();
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
