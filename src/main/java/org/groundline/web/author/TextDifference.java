package org.groundline.web.author;

import static java.util.stream.Collectors.joining;

import com.github.difflib.DiffUtils;
import com.github.difflib.patch.AbstractDelta;
import com.github.difflib.patch.Patch;

import org.groundline.bank.QuestionText;
import org.groundline.web.request.Markdown;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/// What differs between two texts of a question: part by part where both are fixed questions, else
/// line by line.
public final class TextDifference {
    private TextDifference() {}

    /// A part of both texts.
    ///
    /// @param left as HTML, with what is only here marked
    /// @param right as HTML, with what is only here marked
    public record Part(String name, String left, String right, boolean changed) {}

    static List<Part> between(String left, String right) {
        Optional<QuestionText> a = QuestionText.find(left);
        Optional<QuestionText> b = QuestionText.find(right);
        if (a.isEmpty() || b.isEmpty()) {
            return lines(left, right);
        }
        Map<String, String> before = parts(a.get());
        Map<String, String> after = parts(b.get());
        List<String> names = new ArrayList<>(before.keySet());
        new TreeSet<>(after.keySet()).stream().filter(n -> !names.contains(n)).forEach(names::add);
        return names.stream()
                .map(
                        name ->
                                part(
                                        name,
                                        words(before.getOrDefault(name, "")),
                                        words(after.getOrDefault(name, "")),
                                        " "))
                .toList();
    }

    private static Map<String, String> parts(QuestionText text) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("objective", text.objective());
        parts.put("level", text.level());
        parts.put("safety-critical", String.valueOf(text.safetyCritical()));
        parts.put("stem", text.stem());
        for (int i = 0; i < text.options().size(); i++) {
            QuestionText.Answer option = text.options().get(i);
            String idea = option.key() ? "key" : option.misconception();
            parts.put("option " + (i + 1), option.text() + " [" + idea + "]");
        }
        parts.put("rationale", text.rationale());
        parts.put(
                "source",
                text.sources().stream()
                                .map(place -> place.source() + ", " + place.at())
                                .collect(joining("; "))
                        + (text.commonPractice() ? " common practice" : ""));
        parts.put("jurisdiction", text.jurisdiction());
        parts.put("illustration", text.illustration());
        return parts;
    }

    private static List<String> words(String text) {
        return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+"));
    }

    private static List<Part> lines(String left, String right) {
        return List.of(part("text", left.lines().toList(), right.lines().toList(), "\n"));
    }

    private static Part part(String name, List<String> left, List<String> right, String glue) {
        Patch<String> patch = DiffUtils.diff(left, right);
        var before = new StringBuilder();
        var after = new StringBuilder();
        int at = 0;
        int to = 0;
        for (AbstractDelta<String> delta : patch.getDeltas()) {
            append(before, left.subList(at, delta.getSource().getPosition()), "", glue);
            append(after, right.subList(to, delta.getTarget().getPosition()), "", glue);
            append(before, delta.getSource().getLines(), "del", glue);
            append(after, delta.getTarget().getLines(), "ins", glue);
            at = delta.getSource().getPosition() + delta.getSource().size();
            to = delta.getTarget().getPosition() + delta.getTarget().size();
        }
        append(before, left.subList(at, left.size()), "", glue);
        append(after, right.subList(to, right.size()), "", glue);
        return new Part(name, before.toString(), after.toString(), !patch.getDeltas().isEmpty());
    }

    private static void append(StringBuilder html, List<String> pieces, String tag, String glue) {
        if (pieces.isEmpty()) {
            return;
        }
        if (!html.isEmpty()) {
            html.append(glue);
        }
        String text = Markdown.escape(String.join(glue, pieces));
        html.append(tag.isEmpty() ? text : "<" + tag + ">" + text + "</" + tag + ">");
    }
}
