package org.groundline.bank;

import org.groundline.bank.translation.Kind;
import org.groundline.bank.translation.Original;
import org.groundline.bank.translation.Originals;
import org.groundline.bank.translation.Part;
import org.groundline.ledger.CanonicalJson;
import org.groundline.ledger.Digests;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/// What of a bank can be translated: the syllabus, the misconceptions and every fixed question
/// without a drawing.
final class OriginalTexts {
    private OriginalTexts() {}

    /// @param files the file of each question by its id
    static Originals of(
            Course course,
            List<Misconception> misconceptions,
            List<Question> questions,
            Map<String, String> files) {
        List<Original> all = new ArrayList<>();
        course.modules().forEach(module -> addModule(module, all));
        misconceptions.forEach(idea -> all.add(misconception(idea)));
        Set<String> staying =
                questions.stream()
                        .filter(question -> !isTranslatable(question))
                        .map(Question::id)
                        .collect(Collectors.toSet());
        for (Question question : questions) {
            if (question instanceof FixedQuestion fixed && isTranslatable(fixed)) {
                all.add(question(fixed, files.getOrDefault(fixed.id(), "")));
            }
        }
        return new Originals(all, staying);
    }

    /// A drawing has words of its own, and a template's sentences are cut to its values.
    static boolean isTranslatable(Question question) {
        return switch (question) {
            case FixedQuestion fixed -> fixed.figures().isEmpty();
            case NumericQuestion numeric -> false;
        };
    }

    private static void addModule(Module module, List<Original> all) {
        all.add(
                entry(
                        Kind.MODULE,
                        module.id(),
                        new Part("title", module.title(), Prose.TITLE::read)));
        for (Topic topic : module.topics()) {
            all.add(
                    entry(
                            Kind.TOPIC,
                            topic.id(),
                            new Part("title", topic.title(), Prose.TITLE::read)));
            for (Objective objective : topic.objectives()) {
                all.add(
                        entry(
                                Kind.OBJECTIVE,
                                objective.id(),
                                new Part("text", objective.text(), Prose.OBJECTIVE::read)));
            }
        }
    }

    private static Original entry(Kind kind, String id, Part part) {
        Map<String, Object> content = Map.of("id", id, part.name(), part.text());
        return new Original(kind, id, SyllabusFile.NAME, "", version(content), List.of(part));
    }

    private static Original misconception(Misconception idea) {
        return new Original(
                Kind.MISCONCEPTION,
                idea.id(),
                MisconceptionsFile.NAME,
                "",
                version(Content.of(idea)),
                List.of(
                        new Part("wrong", idea.wrong(), Prose.SENTENCE::read),
                        new Part("right", idea.right(), Prose.SENTENCE::read),
                        new Part("feedback", idea.feedback(), Prose.CLAUSE::read)));
    }

    private static String version(Map<String, Object> content) {
        return Digests.hex(CanonicalJson.of(content));
    }

    private static Original question(FixedQuestion question, String file) {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part("stem", question.stem(), Prose.STEM::read));
        for (Option option : question.options()) {
            parts.add(Part.option(parts.size(), option.text(), Prose.OPTION::read));
        }
        parts.add(new Part("rationale", question.rationale(), Prose.RATIONALE::read));
        return new Original(
                Kind.QUESTION, question.id(), file, question.topic(), question.version(), parts);
    }
}
