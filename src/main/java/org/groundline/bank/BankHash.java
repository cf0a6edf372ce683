package org.groundline.bank;

import org.groundline.ledger.CanonicalJson;
import org.groundline.ledger.Digests;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/// The hash of a whole bank. The order of lists counts where it is the course's, not where it is
/// only that of a file.
final class BankHash {
    private BankHash() {}

    static String of(List<Question> questions, Questions.Shipped shipped, SchoolUse use) {
        Lists lists = shipped.lists();
        Map<String, Object> content = new TreeMap<>();
        content.put("course", course(shipped.course()));
        content.put("questions", sorted(questions, Question::id, q -> q.version()));
        content.put("briefs", sorted(shipped.briefs(), Brief::topic, Brief::version));
        content.put(
                "misconceptions",
                sorted(lists.misconceptions().values(), Misconception::id, Content::of));
        content.put("sources", sorted(lists.sources().values(), Source::id, BankHash::source));
        content.put("translations", shipped.translations().content());
        if (!use.equals(SchoolUse.AS_SHIPPED)) {
            content.put("withdrawn", use.withdrawn().stream().sorted().toList());
            content.put("jurisdictions", use.jurisdictions().stream().sorted().toList());
        }
        return Digests.hex(CanonicalJson.of(content));
    }

    private static <T> List<Object> sorted(
            List<T> values, Function<T, String> id, Function<T, Object> content) {
        return values.stream().sorted(Comparator.comparing(id)).map(content).toList();
    }

    private static Map<String, Object> course(Course course) {
        return Map.of(
                "id", course.id(),
                "title", course.title(),
                "discipline", course.discipline(),
                "modules", course.modules().stream().map(BankHash::module).toList());
    }

    private static Map<String, Object> module(Module module) {
        return Map.of(
                "id", module.id(),
                "title", module.title(),
                "topics", module.topics().stream().map(BankHash::topic).toList(),
                "demonstrations", module.demonstrations().stream().map(BankHash::shown).toList());
    }

    private static Map<String, Object> topic(Topic topic) {
        return Map.of(
                "id", topic.id(),
                "title", topic.title(),
                "objectives", topic.objectives().stream().map(BankHash::objective).toList());
    }

    private static Map<String, Object> objective(Objective objective) {
        Map<String, Object> content = new TreeMap<>();
        content.put("id", objective.id());
        content.put("text", objective.text());
        content.put("stage", objective.stage().word());
        objective.national().ifPresent(asked -> content.put("national", asked));
        return content;
    }

    private static Map<String, Object> shown(Demonstration demonstration) {
        return Map.of(
                "id", demonstration.id(),
                "title", demonstration.title(),
                "criteria", demonstration.criteria(),
                "neverOverridable", demonstration.neverOverridable());
    }

    private static Map<String, Object> source(Source source) {
        return Map.of(
                "id", source.id(),
                "title", source.title(),
                "publisher", source.publisher(),
                "year", source.year(),
                "read", source.read().word());
    }
}
