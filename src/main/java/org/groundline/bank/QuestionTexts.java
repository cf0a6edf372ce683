package org.groundline.bank;

import org.groundline.bank.file.Yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/// Finds in a topic file where each question was written.
final class QuestionTexts {
    private static final List<String> LISTS = List.of("questions", "templates");

    private QuestionTexts() {}

    /// Where a question was written.
    ///
    /// @param list the key of the list in which it stands
    /// @param lines of the question alone
    record Written(String topic, String list, List<String> lines) {
        /// The question as a topic file of its own.
        String text() {
            return "topic: %s\n%s:\n%s\n"
                    .formatted(topic, list, String.join("\n", lines).stripTrailing());
        }
    }

    /// The questions of a file by their ids; none where the file is no mapping.
    static Map<String, Written> of(String text, Yaml root) {
        Map<String, Written> written = new LinkedHashMap<>();
        if (root instanceof Yaml.Fields file) {
            List<String> lines = text.lines().toList();
            String topic = word(file, "topic").orElse("");
            NavigableSet<Integer> beginnings = beginnings(file);
            beginnings.add(lines.size() + 1);
            for (String list : LISTS) {
                for (Yaml.Fields question : mappings(file, list)) {
                    List<String> own = slice(lines, question.line(), beginnings);
                    word(question, "id")
                            .ifPresent(id -> written.put(id, new Written(topic, list, own)));
                }
            }
        }
        return written;
    }

    /// From the line a question begins on to where the next one, or the next list, does.
    private static List<String> slice(
            List<String> lines, int from, NavigableSet<Integer> beginnings) {
        Integer to = beginnings.higher(from);
        return lines.subList(from - 1, (to == null ? lines.size() + 1 : to) - 1);
    }

    private static NavigableSet<Integer> beginnings(Yaml.Fields file) {
        NavigableSet<Integer> beginnings = new TreeSet<>();
        file.fields().values().forEach(key -> beginnings.add(key.line()));
        LISTS.forEach(list -> mappings(file, list).forEach(q -> beginnings.add(q.line())));
        return beginnings;
    }

    private static List<Yaml.Fields> mappings(Yaml.Fields file, String list) {
        List<Yaml.Fields> mappings = new ArrayList<>();
        Yaml.Field field = file.fields().get(list);
        if (field != null && field.value() instanceof Yaml.Items items) {
            for (Yaml item : items.items()) {
                if (item instanceof Yaml.Fields fields) {
                    mappings.add(fields);
                }
            }
        }
        return mappings;
    }

    private static Optional<String> word(Yaml.Fields fields, String key) {
        return Optional.ofNullable(fields.fields().get(key))
                .map(Yaml.Field::value)
                .filter(Yaml.Text.class::isInstance)
                .map(text -> ((Yaml.Text) text).value());
    }
}
