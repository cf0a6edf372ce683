package org.groundline.bench;

import org.groundline.bank.BankLocation;
import org.groundline.bank.NumericQuestion;
import org.groundline.bank.Posed;
import org.groundline.bank.Questions;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeUnit;

/// Posing items of all numeric templates in turn, on one core: draw, key, mistakes, texts,
/// intervals; no database, no drawing.
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class PosingBenchmark {
    @SuppressWarnings("NullAway.Init") // JMH calls load before anything else
    private Questions bank;

    private List<NumericQuestion> templates = List.of();
    private long seed;

    @Setup
    public void load() throws IOException {
        try (BankLocation shipped = BankLocation.shipped()) {
            bank = Questions.load(shipped.folder());
        }
        templates =
                bank.all().stream()
                        .filter(NumericQuestion.class::isInstance)
                        .map(NumericQuestion.class::cast)
                        .toList();
    }

    @Benchmark
    public Posed pose() {
        seed++;
        return bank.pose(templates.get((int) (seed % templates.size())), seed);
    }
}
