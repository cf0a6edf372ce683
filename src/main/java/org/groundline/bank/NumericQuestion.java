package org.groundline.bank;

import org.groundline.bank.numeric.Evaluation;
import org.groundline.bank.numeric.NumericTemplate;
import org.groundline.bank.numeric.posed.Cause;
import org.groundline.bank.numeric.posed.PosedChoice;
import org.groundline.bank.numeric.posed.PosedNumber;
import org.groundline.bank.numeric.posed.PosedOption;
import org.groundline.bank.numeric.source.TemplateSource;
import org.groundline.ledger.CanonicalJson;
import org.groundline.ledger.Digests;
import org.jspecify.annotations.Nullable;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/// A question with drawn values and a computed answer, or a decision by a computed value.
public final class NumericQuestion implements Question {
    private final Heading heading;
    private final Audience audience;
    private final TemplateSource source;
    private final NumericTemplate template;
    private final Map<String, Misconception> misconceptions;
    private final Map<Cause, Belief> beliefs;
    private final String canonical;
    private final String version;

    /// @param template what the check made of the source
    /// @param misconceptions those its mistakes or options name and the slips, by id
    NumericQuestion(
            Heading heading,
            Audience audience,
            TemplateSource source,
            NumericTemplate template,
            Map<String, Misconception> misconceptions) {
        this.heading = heading;
        this.audience = audience;
        this.source = source;
        this.template = template;
        this.misconceptions = Collections.unmodifiableMap(new TreeMap<>(misconceptions));
        this.beliefs = beliefs();
        this.canonical = CanonicalJson.of(Content.of(this));
        this.version = Digests.hex(canonical);
    }

    /// What may stand behind a wrong answer, in the words that are frozen.
    private Map<Cause, Belief> beliefs() {
        Map<Cause, Belief> all = new HashMap<>();
        template.causes().forEach(cause -> all.put(cause, worded(cause)));
        return Map.copyOf(all);
    }

    private Belief worded(Cause cause) {
        return switch (cause) {
            case Cause.Idea(String id) -> Belief.of(idea(id));
            case Cause.OtherUnit unit -> SlipIdeas.belief(idea(Belief.UNIT_SLIP), unit);
            case Cause.PowerOfTen ten -> SlipIdeas.belief(idea(Belief.TEN_SLIP), ten);
        };
    }

    private Misconception idea(String id) {
        Misconception idea = misconceptions.get(id);
        if (idea == null) {
            throw new IllegalStateException("unchecked misconception " + id);
        }
        return idea;
    }

    Posed pose(long seed) {
        return switch (template.pose(seed)) {
            case PosedNumber number -> number(number);
            case PosedChoice choice -> choice(choice);
        };
    }

    Optional<Posed> poseAsChoice(long seed) {
        return template.poseAsChoice(seed).map(this::choice);
    }

    private Posed number(PosedNumber posed) {
        List<Key.Mistake> mistakes = posed.mistakes().stream().map(this::mistake).toList();
        return new Posed(
                new Shown.Number(
                        posed.stem(),
                        posed.unit(),
                        posed.signed(),
                        ComputedFigure.beside(posed.picture())),
                new Key.Number(
                        posed.answer(),
                        posed.lowest(),
                        posed.highest(),
                        posed.unit(),
                        mistakes,
                        posed.steps(),
                        posed.explanation(),
                        heading.sourceTexts(),
                        ComputedFigure.explaining(posed.picture())),
                posed.drawn());
    }

    private Key.Mistake mistake(PosedNumber.MistakeRange range) {
        return new Key.Mistake(
                belief(range.cause()),
                range.shown(),
                range.lowest(),
                range.highest(),
                range.step());
    }

    private Posed choice(PosedChoice posed) {
        var lettered = new Lettered(posed.options().stream().map(this::choice).toList());
        return new Posed(
                new Shown.Choice(
                        posed.stem(), lettered.texts(), ComputedFigure.beside(posed.picture())),
                lettered.key(
                        posed.explanation(),
                        heading.sourceTexts(),
                        posed.steps(),
                        ComputedFigure.explaining(posed.picture())),
                posed.drawn());
    }

    private Lettered.Choice choice(PosedOption option) {
        return switch (option) {
            case PosedOption.Right(String text) -> new Lettered.Choice(text, Optional.empty());
            case PosedOption.Wrong(String text, Cause.Idea cause) ->
                    new Lettered.Choice(text, Optional.of(belief(cause)));
        };
    }

    private Belief belief(Cause cause) {
        Belief belief = beliefs.get(cause);
        if (belief == null) {
            throw new IllegalStateException("no belief for " + cause);
        }
        return belief;
    }

    /// Computes the answer for given values, each with its unit or in the unit of its draw.
    ///
    /// @throws org.groundline.error.Refusal.Invalid if a value is missing, unknown or unreadable,
    ///   or if there is no answer for these values
    public Evaluation evaluate(Map<String, String> given) {
        return template.evaluate(given);
    }

    @Override
    public Heading heading() {
        return heading;
    }

    public Audience audience() {
        return audience;
    }

    /// The template as its author wrote it.
    public TemplateSource source() {
        return source;
    }

    public Map<String, Misconception> misconceptions() {
        return misconceptions;
    }

    @Override
    public String stem() {
        return source.stem();
    }

    @Override
    public Optional<Jurisdiction> jurisdiction() {
        return Optional.empty(); // what is computed holds in every country
    }

    @Override
    public String canonical() {
        return canonical;
    }

    @Override
    public String version() {
        return version;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof NumericQuestion question && version.equals(question.version);
    }

    @Override
    public int hashCode() {
        return version.hashCode();
    }

    @Override
    public String toString() {
        return "numeric question " + id();
    }
}
