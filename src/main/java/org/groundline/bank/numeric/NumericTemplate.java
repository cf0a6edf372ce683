package org.groundline.bank.numeric;

import org.groundline.bank.numeric.check.SpaceCheck;
import org.groundline.bank.numeric.check.WorkedCheck;
import org.groundline.bank.numeric.draw.Given;
import org.groundline.bank.numeric.formula.NoAnswer;
import org.groundline.bank.numeric.goal.Decision;
import org.groundline.bank.numeric.goal.Goal;
import org.groundline.bank.numeric.goal.Key;
import org.groundline.bank.numeric.posed.Cause;
import org.groundline.bank.numeric.posed.ChoiceForm;
import org.groundline.bank.numeric.posed.PosedChoice;
import org.groundline.bank.numeric.posed.PosedNumber;
import org.groundline.bank.numeric.posed.PosedTemplate;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.source.TemplateSource;
import org.groundline.bank.numeric.working.Instance;
import org.groundline.bank.numeric.working.Mistake;
import org.groundline.bank.numeric.working.Parts;
import org.groundline.bank.numeric.working.Posing;
import org.groundline.chance.SeededDraw;
import org.groundline.error.Refusal;
import org.groundline.measure.Rounding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/// A checked template. It poses a question for every seed, the same one for the same seed.
public final class NumericTemplate {
    /// The check has seen that at least half of the combinations are allowed, so that only a fault
    /// of the program draws so often in vain.
    private static final int TRIES = 1_000;

    private final Parts parts;
    private final Posing posing;

    private NumericTemplate(Parts parts) {
        this.parts = parts;
        this.posing = new Posing(parts);
    }

    /// Reads a template and examines it: dimensions, draws, mistakes, worked examples.
    public static Checked check(TemplateSource source) {
        var faults = new Faults();
        var parts = new TemplateReader(source, faults).read();
        parts.ifPresent(p -> new SpaceCheck(p, faults).check());
        parts.ifPresent(p -> new WorkedCheck(p, faults).check(source.worked()));
        return checked(parts, faults);
    }

    /// Reads a template that this very program has found sound before: draws and dimensions are
    /// checked, as they come with reading, its cases and worked examples are not examined again.
    public static Checked checkExamined(TemplateSource source) {
        var faults = new Faults();
        return checked(new TemplateReader(source, faults).read(), faults);
    }

    private static Checked checked(Optional<Parts> parts, Faults faults) {
        return parts.isPresent() && faults.isEmpty()
                ? new Checked.Sound(new NumericTemplate(parts.get()))
                : new Checked.Faulty(faults.list());
    }

    public String id() {
        return parts.id();
    }

    /// Everything that may stand behind a wrong answer.
    public List<Cause> causes() {
        return switch (parts.goal()) {
            case Key key ->
                    Stream.concat(
                                    parts.working().mistakes().stream().map(Mistake::cause),
                                    key.slips().causes().stream())
                            .toList();
            case Decision decision ->
                    decision.options().stream().<Cause>map(Decision.Choice::cause).toList();
        };
    }

    public PosedTemplate pose(long seed) {
        var draw = new SeededDraw(seed);
        for (int i = 0; i < TRIES; i++) {
            int[] choice = parts.space().choose(draw);
            Optional<Instance> instance = find(choice);
            if (instance.isPresent()) {
                return posing.pose(choice, instance.get());
            }
        }
        throw new IllegalStateException(
                "template %s: seed %d drew nothing allowed in %d tries"
                        .formatted(parts.id(), seed, TRIES));
    }

    /// The question of [#pose] with options instead of a number to be typed; empty where the values
    /// drawn leave fewer than two mistakes to choose from.
    public Optional<PosedChoice> poseAsChoice(long seed) {
        return switch (pose(seed)) {
            case PosedNumber number -> ChoiceForm.of(number);
            case PosedChoice choice -> Optional.of(choice);
        };
    }

    /// A space too large to be examined as a whole may hold a rare case without a (plausible)
    /// answer: that one is never posed, and neither is one that is too close to call.
    private Optional<Instance> find(int[] choice) {
        try {
            double[] values = parts.space().valuesOf(choice);
            return parts.working().allows(values)
                    ? Optional.of(parts.solve(values)).filter(this::canBePosed)
                    : Optional.empty();
        } catch (NoAnswer none) {
            return Optional.empty();
        }
    }

    private boolean canBePosed(Instance instance) {
        return parts.goal().range().holds(instance.answer())
                && parts.goal().isClear(instance.answer());
    }

    /// Computes the answer for given values, each with its unit or in the unit of its draw; they
    /// may lie outside the ranges that questions draw from.
    ///
    /// @throws Refusal.Invalid if a value is missing, unknown or unreadable, or if there is no
    ///   answer for these values
    public Evaluation evaluate(Map<String, String> given) {
        var read = Given.read(given, parts.space(), parts.told());
        if (read.values().isEmpty()) {
            var problem = read.problems().getFirst();
            throw new Refusal.Invalid(
                    problem.getKey(), problem.getKey() + ": " + problem.getValue());
        }
        try {
            return evaluation(parts.working().solve(Given.array(read.values().get())));
        } catch (NoAnswer none) {
            throw new Refusal.Invalid("There is no answer for these values: " + none.reason());
        }
    }

    private Evaluation evaluation(Instance instance) {
        Goal goal = parts.goal();
        return new Evaluation(
                Rounding.trusted(instance.answer()),
                goal.printed(instance.answer()),
                goal.unit().symbol(),
                parts.solution(instance),
                decided(instance));
    }

    private String decided(Instance instance) {
        return switch (parts.goal()) {
            case Key key -> "";
            case Decision decision -> decision.option(instance.answer(), parts.printed(instance));
        };
    }
}
