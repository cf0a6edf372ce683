package org.groundline.bank;

import org.groundline.bank.translation.Kind;
import org.groundline.bank.translation.Language;
import org.groundline.bank.translation.Translation;
import org.groundline.ledger.CanonicalJson;
import org.groundline.ledger.Digests;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/// A question as it is put in another language: its own texts and those of the ideas behind its
/// options, all of them following the English as it is now. What is right, and how it is marked, is
/// the question's.
public final class TranslatedQuestion {
    private static final String FORMAT = "1";

    private final FixedQuestion question;
    private final String language;
    private final Translation translation;
    private final Map<String, Misconception> ideas;
    private final String canonical;
    private final String version;

    private TranslatedQuestion(
            FixedQuestion question,
            String language,
            Translation translation,
            Map<String, Misconception> ideas) {
        this.question = question;
        this.language = language;
        this.translation = translation;
        this.ideas = new TreeMap<>(ideas);
        this.canonical = CanonicalJson.of(content());
        this.version = Digests.hex(canonical);
    }

    /// The question in a language, or empty where any text of it is missing or stale.
    static Optional<TranslatedQuestion> find(FixedQuestion question, Language language) {
        return language.findCurrent(Kind.QUESTION, question.id())
                .filter(current -> lacking(question, language).isEmpty())
                .map(
                        current ->
                                new TranslatedQuestion(
                                        question,
                                        language.tag(),
                                        current,
                                        ideas(question, language)));
    }

    /// Whether this is what a question says, and not what another version of it said.
    boolean follows(Question other) {
        return question.version().equals(other.version());
    }

    /// The ideas behind the options that have no current translation.
    static List<String> lacking(FixedQuestion question, Language language) {
        return ideaIds(question).stream()
                .filter(id -> language.findCurrent(Kind.MISCONCEPTION, id).isEmpty())
                .toList();
    }

    private static List<String> ideaIds(FixedQuestion question) {
        return question.options().stream()
                .flatMap(option -> option.misconception().stream())
                .map(Misconception::id)
                .distinct()
                .toList();
    }

    private static Map<String, Misconception> ideas(FixedQuestion question, Language language) {
        Map<String, Misconception> ideas = new TreeMap<>();
        for (String id : ideaIds(question)) {
            Translation idea = language.findCurrent(Kind.MISCONCEPTION, id).orElseThrow();
            ideas.put(
                    id,
                    new Misconception(
                            id, idea.text("wrong"), idea.text("right"), idea.text("feedback")));
        }
        return ideas;
    }

    private Map<String, Object> content() {
        return Map.of(
                "format", FORMAT,
                "kind", "translation",
                "language", language,
                "id", question.id(),
                "follows", translation.follows(),
                "stem", translation.text("stem"),
                "options", translation.options(),
                "rationale", translation.text("rationale"),
                "misconceptions", ideas.values().stream().map(Content::of).toList());
    }

    /// The question in English.
    public FixedQuestion question() {
        return question;
    }

    /// A BCP 47 tag.
    public String language() {
        return language;
    }

    /// The content as canonical JSON (RFC 8785), with the version of the English that it follows.
    public String canonical() {
        return canonical;
    }

    /// The SHA-256 of [#canonical] in lower-case hexadecimal digits.
    public String version() {
        return version;
    }

    /// The item that the question is with this seed, in this language: the same options under the
    /// same letters.
    public Posed pose(long seed) {
        List<Lettered.Choice> order = new ArrayList<>();
        for (Option option : question.order(seed)) {
            String text = translation.options().get(question.options().indexOf(option));
            order.add(new Lettered.Choice(text, option.misconception().map(this::belief)));
        }
        var lettered = new Lettered(order);
        return new Posed(
                new Shown.Choice(translation.text("stem"), lettered.texts(), List.of()),
                lettered.key(
                        translation.text("rationale"),
                        question.heading().sourceTexts(),
                        List.of(),
                        List.of()),
                Map.of());
    }

    private Belief belief(Misconception english) {
        return Optional.ofNullable(ideas.get(english.id())).map(Belief::of).orElseThrow();
    }
}
