package org.groundline.bank;

import org.groundline.bank.file.YamlText;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// The parts of a fixed question as somebody types them, sound or not. An empty text is left out.
///
/// @param commonPractice whether it is, beside the sources or without any
public record QuestionText(
        String topic,
        String id,
        String objective,
        String level,
        boolean safetyCritical,
        String stem,
        List<Answer> options,
        String rationale,
        List<Place> sources,
        boolean commonPractice,
        String jurisdiction,
        String illustration) {
    static final String COMMON_PRACTICE = "common practice";

    public QuestionText {
        options = List.copyOf(options);
        sources = List.copyOf(sources);
    }

    /// An option.
    public record Answer(String text, boolean key, String misconception) {}

    /// A place in a source, by the source's id.
    public record Place(String source, String at) {}

    /// The parts of a text, to be changed.
    ///
    /// @return empty where the text holds more than these parts, or is no fixed question at all
    public static Optional<QuestionText> find(String text) {
        return QuestionParts.find(text);
    }

    /// The text in the form of a topic file.
    public String write() {
        Map<String, Object> question = new LinkedHashMap<>();
        put(question, "id", id);
        put(question, "objective", objective);
        put(question, "level", level);
        if (safetyCritical) {
            question.put("safety-critical", "true");
        }
        put(question, "stem", stem);
        question.put("options", options.stream().map(QuestionText::written).toList());
        put(question, "rationale", rationale);
        List<Object> source = writtenSources();
        if (!source.isEmpty()) {
            question.put("source", source.size() == 1 ? source.getFirst() : source);
        }
        put(question, "jurisdiction", jurisdiction);
        put(question, "illustration", illustration);
        Map<String, Object> file = new LinkedHashMap<>();
        file.put("topic", topic);
        file.put("questions", List.of(question));
        return YamlText.of(file);
    }

    private static Map<String, String> written(Answer answer) {
        Map<String, String> option = new LinkedHashMap<>();
        put(option, "text", answer.text());
        if (answer.key()) {
            option.put("key", "true");
        } else {
            put(option, "misconception", answer.misconception());
        }
        return option;
    }

    private List<Object> writtenSources() {
        List<Object> written = new ArrayList<>();
        for (Place place : sources) {
            Map<String, String> cited = new LinkedHashMap<>();
            put(cited, "id", place.source());
            put(cited, "at", place.at());
            written.add(cited);
        }
        if (commonPractice) {
            written.add(COMMON_PRACTICE);
        }
        return written;
    }

    private static void put(Map<String, ? super String> content, String key, String text) {
        if (!text.isBlank()) {
            content.put(key, text.strip());
        }
    }
}
