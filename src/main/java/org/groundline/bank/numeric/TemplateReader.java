package org.groundline.bank.numeric;

import org.groundline.bank.numeric.check.ToldCheck;
import org.groundline.bank.numeric.draw.DrawReader;
import org.groundline.bank.numeric.draw.DrawSpace;
import org.groundline.bank.numeric.formula.Condition;
import org.groundline.bank.numeric.formula.Expression;
import org.groundline.bank.numeric.formula.Formula;
import org.groundline.bank.numeric.formula.Scope;
import org.groundline.bank.numeric.goal.DecisionReader;
import org.groundline.bank.numeric.goal.Goal;
import org.groundline.bank.numeric.goal.KeyReader;
import org.groundline.bank.numeric.picture.Picture;
import org.groundline.bank.numeric.picture.PictureReader;
import org.groundline.bank.numeric.posed.Cause;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.source.Formulas;
import org.groundline.bank.numeric.source.Symbols;
import org.groundline.bank.numeric.source.TemplateSource;
import org.groundline.bank.numeric.source.TemplateSource.AnswerSource;
import org.groundline.bank.numeric.source.TemplateSource.DecideSource;
import org.groundline.bank.numeric.source.TemplateSource.MistakeSource;
import org.groundline.bank.numeric.source.TemplateSource.StepSource;
import org.groundline.bank.numeric.source.Wording;
import org.groundline.bank.numeric.working.Mistake;
import org.groundline.bank.numeric.working.Parts;
import org.groundline.bank.numeric.working.Step;
import org.groundline.bank.numeric.working.Working;
import org.groundline.measure.Unit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/// Reads the texts of a template into its parts: draws, formulas, key, wording.
final class TemplateReader {
    static final int MOST_STEPS = 40;

    private final TemplateSource source;
    private final Faults faults;

    TemplateReader(TemplateSource source, Faults faults) {
        this.source = source;
        this.faults = faults;
    }

    /// The parts, or nothing where a fault was noted.
    Optional<Parts> read() {
        Optional<DrawSpace> space = new DrawReader(faults).read(source.draw());
        Optional<? extends Goal> goal = goal();
        Wording stem = Wording.of(source.stem(), source.draw().keySet(), "stem", faults);
        Wording explain = Wording.of(source.explain(), explained(), "explain", faults);
        if (!faults.isEmpty() || goal.isEmpty() || space.isEmpty()) {
            return Optional.empty();
        }
        Optional<Parts> parts =
                working(space.get(), goal.get()).map(w -> parts(stem, explain, space.get(), w));
        parts.ifPresent(p -> new ToldCheck(p, faults).check());
        return parts.filter(p -> faults.isEmpty());
    }

    private Parts parts(Wording stem, Wording explain, DrawSpace space, Working working) {
        return Parts.of(source.id(), stem, explain, space, working, picture(space, working));
    }

    private Optional<Picture> picture(DrawSpace space, Working working) {
        Scope all = space.scope();
        for (Step step : working.steps()) {
            all = all.with(step.name(), step.unit().dimension());
        }
        Scope answered = all.with(Wording.ANSWER, working.goal().unit().dimension());
        return source.diagram()
                .flatMap(d -> new PictureReader(space.scope(), answered, faults).read(d));
    }

    private Optional<? extends Goal> goal() {
        return switch (source.asked()) {
            case AnswerSource answer -> new KeyReader(faults).read(answer);
            case DecideSource decide ->
                    new DecisionReader(faults).read(decide, source.draw().keySet());
        };
    }

    private Set<String> explained() {
        var names = new LinkedHashSet<>(source.draw().keySet());
        source.steps().forEach(step -> names.add(step.name()));
        names.add(Wording.ANSWER);
        return names;
    }

    private Optional<Working> working(DrawSpace space, Goal goal) {
        Scope drawnScope = space.scope();
        Optional<Condition> where =
                source.where()
                        .flatMap(
                                w ->
                                        faults.noting(
                                                "where",
                                                () -> Formula.readCondition(w, drawnScope)));
        var steps = new ArrayList<Step>();
        Scope scope = steps(drawnScope, steps);
        var answer = inUnit(goal.at() + ".formula", source.asked().formula(), scope, goal.unit());
        var mistakes = mistakes(scope, goal.unit());
        return answer.map(
                a ->
                        new Working(
                                space.draws().size(),
                                where,
                                List.copyOf(steps),
                                a,
                                mistakes,
                                goal));
    }

    /// Reads the steps and returns the scope that knows them, too.
    private Scope steps(Scope drawn, List<Step> steps) {
        if (source.steps().size() > MOST_STEPS) {
            faults.add(
                    "steps",
                    "there are %d steps".formatted(source.steps().size()),
                    "work it out in at most %d".formatted(MOST_STEPS));
            return drawn;
        }
        Scope scope = drawn;
        for (int i = 0; i < source.steps().size(); i++) {
            StepSource step = source.steps().get(i);
            String at = "steps[%d]".formatted(i);
            Symbols.checkName(at + ".name", step.name(), faults);
            if (scope.names().containsKey(step.name())) {
                faults.add(at + ".name", "“%s” is taken".formatted(step.name()), "rename it");
            }
            Optional<Unit> unit = Symbols.unit(at + ".unit", step.unit(), faults);
            if (unit.isPresent()) {
                inUnit(at + ".formula", step.formula(), scope, unit.get())
                        .ifPresent(
                                f -> steps.add(new Step(step.name(), step.text(), f, unit.get())));
                scope = scope.with(step.name(), unit.get().dimension());
            }
        }
        return scope;
    }

    private List<Mistake> mistakes(Scope scope, Unit unit) {
        var mistakes = new ArrayList<Mistake>();
        List<MistakeSource> sources =
                switch (source.asked()) {
                    case AnswerSource answer -> answer.mistakes();
                    case DecideSource decide -> List.of();
                };
        for (int i = 0; i < sources.size(); i++) {
            MistakeSource mistake = sources.get(i);
            int step = mistake.at().map(positionOf("mistakes[%d].at".formatted(i))).orElse(0);
            inUnit("mistakes[%d].formula".formatted(i), mistake.formula(), scope, unit)
                    .ifPresent(
                            f ->
                                    mistakes.add(
                                            new Mistake(
                                                    new Cause.Idea(mistake.misconception()),
                                                    f,
                                                    step)));
        }
        return List.copyOf(mistakes);
    }

    /// The position of a step by its name, from 1; 0 after noting that there is none.
    private Function<String, Integer> positionOf(String at) {
        List<String> names = source.steps().stream().map(StepSource::name).toList();
        return name -> {
            if (!names.contains(name)) {
                faults.add(
                        at,
                        "there is no step called “%s”".formatted(name),
                        names.isEmpty()
                                ? "add steps, or leave it out"
                                : "use one of " + String.join(", ", names));
            }
            return names.indexOf(name) + 1;
        };
    }

    private Optional<Expression> inUnit(String at, String text, Scope scope, Unit unit) {
        return new Formulas(faults).inUnit(at, text, scope, unit);
    }
}
