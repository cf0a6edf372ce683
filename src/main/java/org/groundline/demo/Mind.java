package org.groundline.demo;

import org.groundline.bank.Belief;
import org.groundline.bank.FixedQuestion;
import org.groundline.bank.Key;
import org.groundline.bank.Level;
import org.groundline.bank.Misconception;
import org.groundline.bank.Option;
import org.groundline.bank.Question;
import org.groundline.bank.Questions;
import org.groundline.bank.Topic;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/// What a simulated student knows: an ability, a little more or less of it in each topic, and wrong
/// ideas that stick until somebody talks them over.
///
/// The chance of a right answer is logistic, 1 / (1 + exp(-x)), with x = ability + topic -
/// difficulty - pull, all in logits: the model of Rasch (*Probabilistic models for some
/// intelligence and attainment tests*, 1960) with a pull where an option carries a wrong idea that
/// the student holds. Its numbers are chosen so that the history looks like a school's.
final class Mind {
    private static final double PULL = 3.6;
    private static final double OWN_IDEA = 0.08;
    private static final double YIELDS_TO_IDEA = 0.9;
    private static final double TOPIC_SPREAD = 0.4;

    private double ability;
    private final Map<String, Double> topics = new HashMap<>();
    private final Set<String> ideas = new HashSet<>();

    /// @param intake whose shared ideas the student may hold
    Mind(Questions bank, Roster.Intake intake, double ability, Chance chance) {
        this.ability = ability;
        bank.course().modules().stream()
                .flatMap(module -> module.topics().stream())
                .forEach(topic -> acquire(bank, topic, chance.of(topic.id())));
        intake.sharedIdeas().forEach(shared -> acquire(shared, chance.of("shared")));
    }

    private void acquire(Questions bank, Topic topic, Chance chance) {
        topics.put(topic.id(), chance.between(-TOPIC_SPREAD, TOPIC_SPREAD));
        bank.ofTopic(topic.id()).stream()
                .flatMap(Mind::ideasIn)
                .distinct()
                .sorted()
                .filter(idea -> chance.of(idea).happens(OWN_IDEA))
                .forEach(ideas::add);
    }

    private void acquire(Roster.SharedIdeas shared, Chance chance) {
        shared.ideas().stream()
                .filter(idea -> chance.of(idea).happens(shared.percent() / 100.0))
                .forEach(ideas::add);
    }

    private static Stream<String> ideasIn(Question question) {
        return question instanceof FixedQuestion fixed
                ? fixed.options().stream()
                        .map(Option::misconception)
                        .flatMap(idea -> idea.map(Misconception::id).stream())
                : Stream.of();
    }

    /// Answers an item as this student would: a letter, or a number as typed.
    String answer(Question question, Key key, Chance chance) {
        boolean torn = beliefsIn(key).anyMatch(belief -> ideas.contains(belief.id()));
        double x = ability + topics.getOrDefault(question.topic(), 0.0);
        double likely = logistic(x - difficulty(question.level()) - (torn ? PULL : 0));
        boolean right = chance.happens(likely);
        return switch (key) {
            case Key.Choice choice -> right ? choice.letter() : wrongLetter(choice, torn, chance);
            case Key.Number number ->
                    Typing.of(right ? number.answer() : wrongNumber(number, torn, chance))
                            .in(number.unit(), chance);
        };
    }

    private static Stream<Belief> beliefsIn(Key key) {
        return switch (key) {
            case Key.Choice choice -> choice.beliefs().values().stream();
            case Key.Number number -> number.mistakes().stream().map(Key.Mistake::belief);
        };
    }

    private static double logistic(double x) {
        return 1 / (1 + Math.exp(-x));
    }

    private static double difficulty(Level level) {
        return switch (level) {
            case RECALL -> -0.7;
            case APPLY -> -0.4;
            case JUDGE -> -0.2;
        };
    }

    private String wrongLetter(Key.Choice key, boolean torn, Chance chance) {
        List<String> all = List.copyOf(key.beliefs().keySet());
        List<String> held =
                key.beliefs().entrySet().stream()
                        .filter(e -> ideas.contains(e.getValue().id()))
                        .map(Map.Entry::getKey)
                        .toList();
        return chance.oneOf(torn && chance.happens(YIELDS_TO_IDEA) ? held : all);
    }

    /// A number with a known mistake in it; where none is known, a slip by a factor of ten.
    private BigDecimal wrongNumber(Key.Number key, boolean torn, Chance chance) {
        List<Key.Mistake> held =
                key.mistakes().stream().filter(m -> ideas.contains(m.belief().id())).toList();
        List<Key.Mistake> known =
                torn
                        ? held
                        : key.mistakes().stream().filter(m -> !m.belief().comesFromSlip()).toList();
        return known.isEmpty() ? key.answer().movePointRight(1) : chance.oneOf(known).shown();
    }

    /// Is told what was wrong with an answer; the idea behind it may go.
    void hear(String idea, double convinces, Chance chance) {
        if (chance.happens(convinces)) {
            ideas.remove(idea);
        }
    }

    /// Gets better by study; the wrong ideas that it reaches go, too.
    void study(double more, double convinces, Chance chance) {
        ability += more;
        ideas.removeIf(idea -> chance.of(idea).happens(convinces));
    }
}
