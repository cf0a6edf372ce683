package org.groundline.bench;

import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// The benchmarks by name.
public enum Benchmarks {
    POSING(PosingBenchmark.class, "items posed a second on one core", 100_000);

    private final Class<?> measured;
    private final String unit;
    private final double mark;

    Benchmarks(Class<?> measured, String unit, double mark) {
        this.measured = measured;
        this.unit = unit;
        this.mark = mark;
    }

    /// What was measured.
    ///
    /// @param value the mean of all rounds
    /// @param error half the width of its 99.9 % interval
    /// @param mark what it has to reach
    public record Measured(String name, String unit, double value, double error, double mark) {}

    public static Optional<Benchmarks> findByName(String name) {
        return Arrays.stream(values()).filter(b -> b.word().equals(name)).findFirst();
    }

    public static List<String> names() {
        return Arrays.stream(values()).map(Benchmarks::word).toList();
    }

    private String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    /// Measures in a process of its own; takes about half a minute.
    public Measured run() {
        var options =
                new OptionsBuilder()
                        .include(measured.getName().replace(".", "\\.") + "\\..*")
                        .verbosity(VerboseMode.SILENT)
                        .build();
        try {
            RunResult result = new Runner(options).runSingle();
            var primary = result.getPrimaryResult();
            return new Measured(word(), unit, primary.getScore(), primary.getScoreError(), mark);
        } catch (RunnerException e) {
            throw new IllegalStateException("the benchmark " + word() + " did not run", e);
        }
    }
}
