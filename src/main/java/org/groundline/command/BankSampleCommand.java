package org.groundline.command;

import com.fasterxml.jackson.annotation.JsonRawValue;

import org.groundline.bank.Frozen;
import org.groundline.bank.Key;
import org.groundline.bank.Posed;
import org.groundline.bank.Question;
import org.groundline.bank.Questions;
import org.groundline.bank.Shown;
import org.jspecify.annotations.NullMarked;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.LongStream;

/// `bank sample`: a question as it would be put to students.
@NullMarked
@Command(
        name = "sample",
        description = "Shows a question as it would be put to students, with its key.")
final class BankSampleCommand implements Callable<Integer> {
    @Mixin private BankOptions options = new BankOptions();

    @Parameters(paramLabel = "ID", description = "The question.")
    private String id = "";

    @Option(names = "--count", paramLabel = "N", description = "How many; left out, one.")
    private int count = 1;

    @Option(names = "--seed", paramLabel = "S", description = "The first seed; left out, 1.")
    private long seed = 1;

    @Option(
            names = "--form",
            paramLabel = "typed|choice",
            converter = SampleForm.Reader.class,
            description = "How a number is asked for; left out, typed.")
    private SampleForm form = SampleForm.TYPED;

    /// One posed question as JSON.
    record Sample(
            String id,
            String version,
            long seed,
            @JsonRawValue String shown,
            @JsonRawValue String key,
            Map<String, String> drawn) {}

    @Override
    public Integer call() throws Exception {
        return options.withQuestions(
                bank -> {
                    Question question = bank.question(id);
                    switch (options.format()) {
                        case JSON -> printJson(bank, question);
                        case TEXT ->
                                seeds().forEach(
                                                s ->
                                                        pose(bank, question, s)
                                                                .ifPresent(p -> printText(p, s)));
                    }
                });
    }

    private LongStream seeds() {
        return LongStream.range(0, count).map(i -> seed + i);
    }

    private void printJson(Questions bank, Question question) {
        List<Sample> samples =
                seeds().boxed()
                        .flatMap(
                                s ->
                                        pose(bank, question, s)
                                                .map(p -> sample(question, p, s))
                                                .stream())
                        .toList();
        options.print(OutputFormat.json(samples));
    }

    /// The question in the form asked for; empty after saying that these values do not allow it.
    private Optional<Posed> pose(Questions bank, Question question, long itsSeed) {
        return switch (form) {
            case TYPED -> Optional.of(bank.pose(question, itsSeed));
            case CHOICE -> {
                Optional<Posed> posed = bank.poseAsChoice(question, itsSeed);
                if (posed.isEmpty()) {
                    options.complain(
                            "seed %d: no choice, as fewer than two mistakes are apart for these values"
                                    .formatted(itsSeed));
                }
                yield posed;
            }
        };
    }

    private static Sample sample(Question question, Posed posed, long seed) {
        return new Sample(
                question.id(),
                question.version(),
                seed,
                Frozen.write(posed.shown()),
                Frozen.write(posed.key()),
                posed.drawn());
    }

    private void printText(Posed posed, long seed) {
        options.print("seed " + seed + ": " + posed.shown().stem());
        if (posed.shown() instanceof Shown.Choice choice) {
            for (int i = 0; i < choice.options().size(); i++) {
                options.print("  " + "ABCD".charAt(i) + "  " + choice.options().get(i));
            }
        }
        switch (posed.key()) {
            case Key.Choice key -> printChoice(key);
            case Key.Number key -> printNumber(key);
        }
    }

    private void printChoice(Key.Choice key) {
        options.print("  key: " + key.letter());
        key.steps().forEach(step -> options.print("  step: " + step));
        key.beliefs()
                .forEach(
                        (letter, belief) ->
                                options.print("  mistake: " + letter + ", " + belief.feedback()));
    }

    private void printNumber(Key.Number key) {
        options.print(
                "  key: %s %s, accepted from %s to %s"
                        .formatted(
                                key.answer().toPlainString(),
                                key.unit(),
                                key.lowest().toPlainString(),
                                key.highest().toPlainString()));
        for (Key.Mistake mistake : key.mistakes()) {
            options.print(
                    "  mistake: %s %s, %s"
                            .formatted(
                                    mistake.shown().toPlainString(),
                                    key.unit(),
                                    mistake.belief().feedback()));
        }
    }
}
