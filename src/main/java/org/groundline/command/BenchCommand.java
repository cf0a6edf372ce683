package org.groundline.command;

import org.groundline.bench.Benchmarks;
import org.groundline.bench.Measured;
import org.jspecify.annotations.NullMarked;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

import java.io.IOException;
import java.util.concurrent.Callable;

/// `bench`: measures the program on this machine.
@NullMarked
@Command(
        name = "bench",
        mixinStandardHelpOptions = true,
        description = "Measures the program on this machine, beside the mark it has to reach.")
final class BenchCommand implements Callable<Integer> {
    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "NAME",
            description = "What to measure: posing, or loading, which takes minutes.")
    private String name = "";

    @Option(
            names = "--format",
            paramLabel = "text|json",
            converter = OutputFormat.Reader.class,
            description = "How to write each figure; left out, text.")
    private OutputFormat format = OutputFormat.TEXT;

    @Override
    public Integer call() throws IOException {
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
        benchmark.run(this::print);
        return 0;
    }

    private void print(Measured measured) {
        var out = spec.commandLine().getOut();
        switch (format) {
            case JSON -> out.println(OutputFormat.json(measured));
            case TEXT -> out.println(measured.text());
        }
        out.flush();
    }
}
