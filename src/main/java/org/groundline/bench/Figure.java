package org.groundline.bench;

import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/// One figure to be measured, and the mark it has to reach.
///
/// @param name what is measured, as it is printed
/// @param method the method that does it once
record Figure(
        String name, Class<?> benchmark, String method, String unit, Bound bound, double mark) {
    /// Measures in a process of its own, which has these system properties besides.
    Measured measure(String... properties) {
        var options =
                new OptionsBuilder()
                        .include((benchmark.getName() + "." + method).replace(".", "\\.") + "$")
                        .jvmArgsAppend(properties)
                        .shouldFailOnError(true)
                        .verbosity(VerboseMode.SILENT)
                        .build();
        try {
            Result<?> result = new Runner(options).runSingle().getPrimaryResult();
            return new Measured(name, unit, result.getScore(), result.getScoreError(), bound, mark);
        } catch (RunnerException e) {
            throw new IllegalStateException("the benchmark " + name + " did not run", e);
        }
    }
}
