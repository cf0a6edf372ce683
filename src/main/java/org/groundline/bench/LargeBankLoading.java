package org.groundline.bench;

import org.groundline.bank.KnownSound;
import org.groundline.bank.Questions;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/// Loading a [LargeBank], whose folder the property [#FOLDER] names, on all cores.
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.SECONDS)
public abstract class LargeBankLoading {
    static final String FOLDER = "groundline.bench.folder";

    private final Path folder = Path.of(System.getProperty(FOLDER, ""));

    /// Without anything kept the second figure would be the first once more.
    @Setup(Level.Trial)
    public void requireKept() throws IOException {
        try (Stream<Path> kept = Files.list(LargeBank.data(folder))) {
            if (kept.findAny().isEmpty()) {
                throw new IllegalStateException("nothing is known to be sound in " + folder);
            }
        }
    }

    @Benchmark
    public Questions full() {
        return Questions.load(LargeBank.bank(folder));
    }

    @Benchmark
    public Questions unchanged() {
        return Questions.load(LargeBank.bank(folder), KnownSound.in(LargeBank.data(folder)));
    }
}
