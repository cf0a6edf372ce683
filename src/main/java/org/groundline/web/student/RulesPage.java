package org.groundline.web.student;

import org.groundline.web.request.Frame;

import java.util.List;
import java.util.UUID;

/// The rules of a test, read before it is begun.
///
/// @param facts the rules that have a number or a name
/// @param sentences the rules that need a sentence
/// @param closed why it cannot be begun now; empty where it can
/// @param message why it was not begun just now; empty where nothing happened
public record RulesPage(
        Frame frame,
        RulesWords words,
        UUID opening,
        List<Fact> facts,
        List<String> sentences,
        String button,
        String closed,
        String message) {
    public RulesPage {
        facts = List.copyOf(facts);
        sentences = List.copyOf(sentences);
    }

    /// A rule and its value.
    public record Fact(String name, String value) {}
}
