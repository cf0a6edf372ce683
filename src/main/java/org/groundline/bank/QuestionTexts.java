package org.groundline.bank;

import org.groundline.bank.file.Yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/// Cuts a topic file into texts of one question each, as they were written.
final class QuestionTexts {
    private static final List<String> LISTS = List.of("questions", "templates");

    private final List<String> lines;
    private final Yaml.Fields file;

    private QuestionTexts(String text, Yaml.Fields file) {
        this.lines = text.lines().toList();
        this.file = file;
    }

    /// The texts by the ids of their questions; none where the file is no mapping.
    static Map<String, String> of(String text, Yaml root) {
        return root instanceof Yaml.Fields file ? new QuestionTexts(text, file).cut() : Map.of();
    }

    private Map<String, String> cut() {
        Map<String, String> texts = new LinkedHashMap<>();
        Optional<String> topic = word(file, "topic");
        for (String list : LISTS) {
            for (Yaml.Fields question : mappings(list)) {
                word(question, "id")
                        .ifPresent(
                                id ->
                                        texts.put(
                                                id,
                                                "topic: %s\n%s:\n%s"
                                                        .formatted(
                                                                topic.orElse(""),
                                                                list,
                                                                slice(question.line()))));
            }
        }
        return texts;
    }

    /// From the line a question begins on to where the next one, or the next list, does.
    private String slice(int from) {
        int to =
                beginnings()
                        .filter(line -> line > from)
                        .mapToInt(Integer::intValue)
                        .min()
                        .orElse(lines.size() + 1);
        return String.join("\n", lines.subList(from - 1, to - 1)).stripTrailing() + "\n";
    }

    private Stream<Integer> beginnings() {
        Stream<Integer> keys = file.fields().values().stream().map(Yaml.Field::line);
        Stream<Integer> questions =
                LISTS.stream().flatMap(list -> mappings(list).stream()).map(Yaml::line);
        return Stream.concat(keys, questions);
    }

    private List<Yaml.Fields> mappings(String list) {
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
