package org.groundline.bench;

import static org.groundline.bench.Bound.AT_LEAST;
import static org.groundline.bench.Bound.AT_MOST;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/// The benchmarks by name.
public enum Benchmarks {
    /// Takes about half a minute.
    POSING(
            new Figure(
                    "posing",
                    PosingBenchmark.class,
                    "pose",
                    "items posed a second on one core",
                    AT_LEAST,
                    100_000)),

    /// Takes about three minutes.
    LOADING(
            loading("loading in full", LoadingBenchmark.class, "full", 2),
            loading("loading unchanged", LoadingBenchmark.class, "unchanged", 0.5),
            loading("first loading in full", FirstLoadingBenchmark.class, "full", 2),
            loading("first loading unchanged", FirstLoadingBenchmark.class, "unchanged", 0.5));

    private static final int LARGE = 5_000;

    private final List<Figure> figures;

    Benchmarks(Figure... figures) {
        this.figures = List.of(figures);
    }

    private static Figure loading(String name, Class<?> benchmark, String method, double mark) {
        return new Figure(name, benchmark, method, "s for 5,000 questions", AT_MOST, mark);
    }

    public static Optional<Benchmarks> findByName(String name) {
        return Arrays.stream(values()).filter(b -> b.word().equals(name)).findFirst();
    }

    public static List<String> names() {
        return Arrays.stream(values()).map(Benchmarks::word).toList();
    }

    private String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /// Measures one figure after another, and hands each over as soon as it is there.
    public void run(Consumer<Measured> told) throws IOException {
        switch (this) {
            case POSING -> figures.forEach(figure -> told.accept(figure.measure()));
            case LOADING -> {
                try (LargeBank bank = LargeBank.make(LARGE)) {
                    String folder = "-D" + LargeBankLoading.FOLDER + "=" + bank.folder();
                    figures.forEach(figure -> told.accept(figure.measure(folder)));
                }
            }
        }
    }
}
