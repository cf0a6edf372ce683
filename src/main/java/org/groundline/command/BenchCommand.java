package org.groundline.command;

import org.groundline.bench.Benchmarks;
import org.groundline.bench.Benchmarks.Measured;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

import java.util.concurrent.Callable;

/// `bench`: measures the program on this machine.
@NullMarked
@Command(
        name = "bench",
        mixinStandardHelpOptions = true,
        description = "Measures the program on this machine, beside the mark it has to reach.")
final class BenchCommand implements Callable<Integer> {
    @Spec private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "NAME", description = "What to measure: posing.")
    private String name = "";

    @Option(
            names = "--format",
            paramLabel = "text|json",
            converter = BankFormat.Reader.class,
            description = "How to write the result; left out, text.")
    private BankFormat format = BankFormat.TEXT;

    @Override
    public Integer call() {
        Benchmarks benchmark =
                Benchmarks.findByName(name)
                        .orElseThrow(
                                () ->
                                        new ParameterException(
                                                command().commandLine(),
                                                "There is no benchmark “%s”; there is %s."
                                                        .formatted(
                                                                name,
                                                                String.join(
                                                                        ", ",
                                                                        Benchmarks.names()))));
        print(benchmark.run());
        return 0;
    }

    private void print(Measured measured) {
        var out = command().commandLine().getOut();
        switch (format) {
            case JSON -> out.println(BankFormat.json(measured));
            case TEXT ->
                    out.println(
                            "%s: %,.0f ± %,.0f %s; the mark is %,.0f"
                                    .formatted(
                                            measured.name(),
                                            measured.value(),
                                            measured.error(),
                                            measured.unit(),
                                            measured.mark()));
        }
        out.flush();
    }

    private CommandSpec command() {
        if (spec == null) {
            throw new IllegalStateException("a command outside a command line");
        }
        return spec;
    }
}
