package org.groundline.bank;

import org.groundline.chance.SeededDraw;
import org.groundline.diagram.Illustration;
import org.groundline.ledger.CanonicalJson;
import org.groundline.ledger.Digests;
import org.jspecify.annotations.Nullable;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/// A question whose text and options an author wrote out.
public final class FixedQuestion implements Question {
    private final Heading heading;
    private final String stem;
    private final List<Option> options;
    private final String rationale;
    private final @Nullable Jurisdiction jurisdiction;
    private final List<Figure> figures;
    private final String canonical;
    private final String version;

    FixedQuestion(
            Heading heading,
            String stem,
            List<Option> options,
            String rationale,
            @Nullable Jurisdiction jurisdiction,
            Optional<Illustration> illustration) {
        this.heading = heading;
        this.stem = stem;
        this.options = List.copyOf(options);
        this.rationale = rationale;
        this.jurisdiction = jurisdiction;
        this.figures = illustration.<Figure>map(IllustratedFigure::of).stream().toList();
        this.canonical = CanonicalJson.of(Content.of(this));
        this.version = Digests.hex(canonical);
    }

    /// The question as put to one student: numbers ascend, other options stand as the seed has it.
    Posed pose(long seed) {
        var lettered = new Lettered(order(seed).stream().map(FixedQuestion::choice).toList());
        return new Posed(
                new Shown.Choice(stem, lettered.texts(), figures),
                lettered.key(rationale, heading.sourceTexts(), List.of(), List.of()),
                Map.of());
    }

    /// The options in the order in which they are shown.
    List<Option> order(long seed) {
        return NumericOrder.find(options, Option::text)
                .orElseGet(() -> new SeededDraw(seed).shuffle(options));
    }

    private static Lettered.Choice choice(Option option) {
        return new Lettered.Choice(option.text(), option.misconception().map(Belief::of));
    }

    @Override
    public Heading heading() {
        return heading;
    }

    @Override
    public String stem() {
        return stem;
    }

    /// The options in the author's order.
    public List<Option> options() {
        return options;
    }

    /// The drawing beside the stem, or none.
    public List<Figure> figures() {
        return figures;
    }

    public String rationale() {
        return rationale;
    }

    @Override
    public Optional<Jurisdiction> jurisdiction() {
        return Optional.ofNullable(jurisdiction);
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
        return other instanceof FixedQuestion question && version.equals(question.version);
    }

    @Override
    public int hashCode() {
        return version.hashCode();
    }

    @Override
    public String toString() {
        return "fixed question " + id();
    }
}
