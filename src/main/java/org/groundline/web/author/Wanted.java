package org.groundline.web.author;

import static java.util.stream.Collectors.joining;

import io.javalin.http.Context;

import org.groundline.authoring.Dossiers.Listed;
import org.groundline.authoring.State;
import org.groundline.bank.FixedQuestion;
import org.groundline.bank.NumericQuestion;
import org.groundline.bank.Option;
import org.groundline.bank.Question;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/// Which questions of a list somebody wants to see. What is left empty is any.
///
/// @param words each of which stands in the question, in any case
/// @param place a module, topic or objective
/// @param kind `fixed` or `numeric`
/// @param state a word of [org.groundline.authoring.State], `shipped` or `withdrawn`
record Wanted(String words, String place, String level, String kind, String state) {
    private static final String SHIPPED = "shipped";
    private static final String WITHDRAWN = "withdrawn";

    static Wanted of(Context ctx) {
        return new Wanted(
                parameter(ctx, "words"),
                parameter(ctx, "place"),
                parameter(ctx, "level"),
                parameter(ctx, "kind"),
                parameter(ctx, "state"));
    }

    private static String parameter(Context ctx, String name) {
        return Objects.requireNonNullElse(ctx.queryParam(name), "").strip();
    }

    boolean fits(Listed listed) {
        return isAt(listed.question())
                && (level.isEmpty()
                        || listed.question()
                                .filter(q -> q.level().word().equals(level))
                                .isPresent())
                && (kind.isEmpty() || kind.equals(kindOf(listed.question())))
                && (state.isEmpty() || state.equals(stateOf(listed)))
                && hasWords(listed);
    }

    private boolean isAt(Optional<Question> question) {
        return place.isEmpty()
                || question.filter(
                                q ->
                                        Stream.of(q.module(), q.topic(), q.objective())
                                                .anyMatch(place::equals))
                        .isPresent();
    }

    private boolean hasWords(Listed listed) {
        String text =
                (listed.id() + " " + listed.question().map(Wanted::text).orElse(""))
                        .toLowerCase(Locale.ROOT);
        return Arrays.stream(words.toLowerCase(Locale.ROOT).split("\\s+")).allMatch(text::contains);
    }

    /// All that an author wrote, for the search.
    private static String text(Question question) {
        return switch (question) {
            case FixedQuestion fixed ->
                    fixed.stem()
                            + " "
                            + fixed.options().stream().map(Option::text).collect(joining(" "))
                            + " "
                            + fixed.rationale();
            case NumericQuestion numeric -> numeric.stem() + " " + numeric.source().explain();
        };
    }

    static String kindOf(Optional<Question> question) {
        return question.map(
                        q ->
                                switch (q) {
                                    case FixedQuestion fixed -> "fixed";
                                    case NumericQuestion numeric -> "numeric";
                                })
                .orElse("");
    }

    static String stateOf(Listed listed) {
        if (listed.withdrawn()) {
            return WITHDRAWN;
        }
        return listed.latest().map(State::word).orElse(SHIPPED);
    }

    /// The states one may ask for.
    static List<String> states() {
        return Stream.of(
                        Stream.of(SHIPPED),
                        Arrays.stream(State.values()).map(State::word),
                        Stream.of(WITHDRAWN))
                .flatMap(states -> states)
                .toList();
    }
}
