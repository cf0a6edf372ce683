package org.groundline.bank.numeric;

import org.groundline.chance.SeededDraw;
import org.groundline.error.Refusal;
import org.groundline.measure.Rounding;

import java.util.Map;
import java.util.Optional;

/// A checked template. It poses a question for every seed, the same one for the same seed.
public final class NumericTemplate {
    /// The check has seen that at least half of the combinations are allowed, so that only a fault
    /// of the program draws so often in vain.
    private static final int TRIES = 1_000;

    private final Parts parts;

    private NumericTemplate(Parts parts) {
        this.parts = parts;
    }

    /// Reads a template and examines it: dimensions, draws, mistakes, worked examples.
    public static Checked check(TemplateSource source) {
        var faults = new Faults();
        var parts = new TemplateReader(source, faults).read();
        parts.ifPresent(p -> new SpaceCheck(p, faults).check());
        parts.ifPresent(p -> new WorkedCheck(p, faults).check(source.worked()));
        return parts.isPresent() && faults.isEmpty()
                ? new Checked.Sound(new NumericTemplate(parts.get()))
                : new Checked.Faulty(faults.list());
    }

    public String id() {
        return parts.id();
    }

    public PosedNumber pose(long seed) {
        var draw = new SeededDraw(seed);
        for (int i = 0; i < TRIES; i++) {
            int[] choice = parts.space().choose(draw);
            Optional<Instance> instance = find(parts.space().valuesOf(choice));
            if (instance.isPresent()) {
                return posed(choice, instance.get());
            }
        }
        throw new IllegalStateException(
                "template %s: seed %d drew nothing allowed in %d tries"
                        .formatted(parts.id(), seed, TRIES));
    }

    /// A space too large to be examined as a whole may hold a rare case without a (plausible)
    /// answer: that one is never posed.
    private Optional<Instance> find(double[] values) {
        try {
            return parts.working().allows(values)
                    ? Optional.of(parts.working().solve(values)).filter(this::isPlausible)
                    : Optional.empty();
        } catch (NoAnswer none) {
            return Optional.empty();
        }
    }

    private boolean isPlausible(Instance instance) {
        return parts.key().isPlausible(instance.answer());
    }

    private PosedNumber posed(int[] choice, Instance instance) {
        var key = parts.key();
        var drawn = parts.printed(choice);
        var accepted = key.accepted(instance.answer());
        return new PosedNumber(
                drawn,
                parts.stem().with(drawn),
                key.unit().symbol(),
                key.printed(instance.answer()),
                accepted.lowest(),
                accepted.highest(),
                MistakeRanges.of(instance, parts.working().mistakes(), key),
                parts.solution(instance),
                parts.explanation(drawn, instance));
    }

    /// Computes the answer for given values, each with its unit or in the unit of its draw; they
    /// may lie outside the ranges that questions draw from.
    ///
    /// @throws Refusal.Invalid if a value is missing, unknown or unreadable, or if there is no
    ///   answer for these values
    public Evaluation evaluate(Map<String, String> given) {
        var read = Given.read(given, parts.space().draws());
        if (read.values().isEmpty()) {
            var problem = read.problems().getFirst();
            throw new Refusal.Invalid(
                    problem.getKey(), problem.getKey() + ": " + problem.getValue());
        }
        try {
            var instance = parts.working().solve(Given.array(read.values().get()));
            return new Evaluation(
                    Rounding.trusted(instance.answer()),
                    parts.key().printed(instance.answer()),
                    parts.key().unit().symbol(),
                    parts.solution(instance));
        } catch (NoAnswer none) {
            throw new Refusal.Invalid("There is no answer for these values: " + none.reason());
        }
    }
}
