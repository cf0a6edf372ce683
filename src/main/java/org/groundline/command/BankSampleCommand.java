package org.groundline.command;

import com.fasterxml.jackson.annotation.JsonRawValue;
import com.fasterxml.jackson.databind.SequenceWriter;

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

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;

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

    @Option(
            names = "--progress",
            description = "Tell every two seconds on standard error how many are done.")
    private boolean progress;

    @Override
    public Integer call() throws Exception {
        if (count < 1) {
            throw options.wrong("--count is %d; ask for at least one".formatted(count));
        }
        return options.withQuestions(bank -> print(bank, bank.question(id)));
    }

    private void print(Questions bank, Question question) {
        LongOutput out = options.longOutput();
        try {
            switch (options.format()) {
                case JSON -> printJson(bank, question, out);
                case TEXT -> eachPosed(bank, question, out, (p, s) -> printText(p, s, out));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        out.flush();
    }

    private void printJson(Questions bank, Question question, LongOutput out) throws IOException {
        try (SequenceWriter samples = OutputFormat.elements(out.writer())) {
            eachPosed(bank, question, out, (p, s) -> samples.write(sample(question, p, s)));
        }
        out.line("");
    }

    /// What is done with one posed question; nothing of it is kept, however many there are.
    private interface Use {
        void accept(Posed posed, long seed) throws IOException;
    }

    private void eachPosed(Questions bank, Question question, LongOutput out, Use use)
            throws IOException {
        Progress told =
                new Progress(count, System::nanoTime, progress ? options::complain : text -> {});
        for (int i = 0; i < count; i++) {
            long itsSeed = seed + i;
            Optional<Posed> posed = pose(bank, question, itsSeed);
            if (posed.isPresent()) {
                use.accept(posed.get(), itsSeed);
            }
            out.endPart();
            told.oneMore();
        }
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

    private void printText(Posed posed, long seed, LongOutput out) {
        out.line("seed " + seed + ": " + posed.shown().stem());
        if (posed.shown() instanceof Shown.Choice choice) {
            for (int i = 0; i < choice.options().size(); i++) {
                out.line("  " + "ABCD".charAt(i) + "  " + choice.options().get(i));
            }
        }
        switch (posed.key()) {
            case Key.Choice key -> printChoice(key, out);
            case Key.Number key -> printNumber(key, out);
        }
    }

    private void printChoice(Key.Choice key, LongOutput out) {
        out.line("  key: " + key.letter());
        key.steps().forEach(step -> out.line("  step: " + step));
        key.beliefs()
                .forEach(
                        (letter, belief) ->
                                out.line("  mistake: " + letter + ", " + belief.feedback()));
    }

    private void printNumber(Key.Number key, LongOutput out) {
        out.line(
                "  key: %s %s, accepted from %s to %s"
                        .formatted(
                                key.answer().toPlainString(),
                                key.unit(),
                                key.lowest().toPlainString(),
                                key.highest().toPlainString()));
        for (Key.Mistake mistake : key.mistakes()) {
            out.line(
                    "  mistake: %s %s, %s"
                            .formatted(
                                    mistake.shown().toPlainString(),
                                    key.unit(),
                                    mistake.belief().feedback()));
        }
    }
}
