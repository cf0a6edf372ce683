package org.groundline.sitting;

import static java.util.Objects.requireNonNull;

import org.groundline.bank.Audience;
import org.groundline.bank.FixedQuestion;
import org.groundline.bank.NumericQuestion;
import org.groundline.bank.Question;
import org.groundline.bank.Questions;
import org.groundline.chance.SeededDraw;
import org.groundline.error.Refusal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// Draws the questions of a paper from the bank by a blueprint and a seed: numeric ones first, up
/// to their share, then fixed ones, the safety-critical before the others until there are enough,
/// then all in a drawn order. The same bank, blueprint and seed give the same paper.
final class PaperDraw {
    private final Questions bank;
    private final Blueprint blueprint;
    private final SeededDraw draw;

    PaperDraw(Questions bank, Blueprint blueprint, long seed) {
        this.bank = bank;
        this.blueprint = blueprint;
        this.draw = new SeededDraw(seed);
    }

    /// Returns the questions in their order on the paper.
    ///
    /// @throws Refusal.Conflict if the bank has too few questions of a topic
    List<Question> questions() {
        Map<String, List<Question>> chosen = new LinkedHashMap<>();
        blueprint.topics().keySet().forEach(topic -> chosen.put(topic, new ArrayList<>()));
        addNumeric(chosen);
        int missing = blueprint.safetyCritical();
        int topicsLeft = chosen.size();
        for (var topic : chosen.entrySet()) {
            missing -=
                    addFixed(topic.getKey(), topic.getValue(), Math.ceilDiv(missing, topicsLeft--));
        }
        List<Question> all = chosen.values().stream().flatMap(List::stream).toList();
        return draw.split("order").shuffle(all);
    }

    private void addNumeric(Map<String, List<Question>> chosen) {
        List<Question> numeric =
                chosen.keySet().stream()
                        .flatMap(topic -> bank.ofTopic(topic).stream())
                        .filter(PaperDraw::isForStudents)
                        .toList();
        int left = blueprint.numericMost();
        for (Question question : draw.split("numeric").shuffle(numeric)) {
            List<Question> ofTopic = requireNonNull(chosen.get(question.topic()));
            if (left > 0 && 2 * (ofTopic.size() + 1) <= wanted(question.topic())) {
                ofTopic.add(question);
                left--;
            }
        }
    }

    private int wanted(String topic) {
        return requireNonNull(blueprint.topics().get(topic));
    }

    private static boolean isForStudents(Question question) {
        return question instanceof NumericQuestion numeric && numeric.audience() == Audience.CORE;
    }

    /// Fills a topic up and returns how many of its items are safety-critical.
    private int addFixed(String topic, List<Question> chosen, int safetyCriticalWanted) {
        List<Question> fixed =
                bank.ofTopic(topic).stream().filter(FixedQuestion.class::isInstance).toList();
        List<Question> order = new ArrayList<>();
        List<Question> shuffled = draw.split(topic).shuffle(fixed);
        shuffled.stream()
                .filter(Question::safetyCritical)
                .limit(Math.max(0, safetyCriticalWanted))
                .forEach(order::add);
        shuffled.stream().filter(q -> !order.contains(q)).forEach(order::add);
        int missing = wanted(topic) - chosen.size();
        if (order.size() < missing) {
            throw new Refusal.Conflict(
                    "The bank has %d questions on topic %s and the test wants %d."
                            .formatted(order.size() + chosen.size(), topic, wanted(topic)));
        }
        chosen.addAll(order.subList(0, missing));
        return (int) chosen.stream().filter(Question::safetyCritical).count();
    }
}
