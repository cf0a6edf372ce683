package org.groundline.command;

import org.groundline.bench.Benchmarks;
import org.groundline.bench.Benchmarks.Measured;
import org.jspecify.annotations.NullMarked;

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
    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "NAME", description = "What to measure: posing.")
    private String name = "";

    @Option(
            names = "--format",
            paramLabel = "text|json",
            converter = OutputFormat.Reader.class,
            description = "How to write the result; left out, text.")
    private OutputFormat format = OutputFormat.TEXT;

    @Override
    public Integer call() {
        Benchmarks benchmark =
                Benchmarks.findByName(name)
                        .orElseThrow(
                                () ->
                                        new ParameterException(
                                                spec.commandLine(),
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
        var out = spec.commandLine().getOut();
        switch (format) {
            case JSON -> out.println(OutputFormat.json(measured));
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
}
