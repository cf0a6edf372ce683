package org.groundline.bank;

import org.commonmark.node.Document;
import org.commonmark.node.Emphasis;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;

import java.util.Optional;

/// The limits of texts: how short and how long, and of Markdown only paragraphs and emphasis.
enum Prose {
    TITLE(2, 120),
    OBJECTIVE(10, 250),
    SENTENCE(10, 400),
    CLAUSE(5, 160),
    STEM(15, 800),
    OPTION(1, 220),
    RATIONALE(30, 1_800),
    PLACE(1, 120);

    private static final Parser MARKDOWN = Parser.builder().build();

    private final int shortest;
    private final int longest;

    Prose(int shortest, int longest) {
        this.shortest = shortest;
        this.longest = longest;
    }

    /// The text under a key that must be there, within the limits. One that is too long is not
    /// searched for Markdown, as that goes as deep as the Markdown is nested.
    String read(Section section, String key, String remedy) {
        String text = section.text(key, remedy);
        if (!text.isEmpty()) {
            int length = text.codePointCount(0, text.length());
            if (length < shortest || length > longest) {
                noteLength(section, key, length);
            }
            if (length <= longest) {
                findMarkup(text).ifPresent(found -> noteMarkup(section, key, found));
            }
        }
        return text;
    }

    private void noteLength(Section section, String key, int length) {
        String problem = "has %d characters in '%s'".formatted(length, key);
        String remedy = "write %d to %d characters".formatted(shortest, longest);
        section.note(Rule.LENGTH, key, problem, remedy);
    }

    private static void noteMarkup(Section section, String key, String found) {
        String remedy =
                "only *emphasis* and **strong emphasis** are shown everywhere, write it plainly";
        section.note(
                Rule.MARKDOWN,
                key,
                "has Markdown of the kind " + found + " in '" + key + "'",
                remedy);
    }

    /// The kind of Markdown in the text that is more than paragraphs and emphasis.
    static Optional<String> findMarkup(String text) {
        return findMarkup(MARKDOWN.parse(text));
    }

    private static Optional<String> findMarkup(Node node) {
        if (!isPlain(node)) {
            return Optional.of(node.getClass().getSimpleName());
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
            Optional<String> found = findMarkup(child);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static boolean isPlain(Node node) {
        return node instanceof Document
                || node instanceof Paragraph
                || node instanceof Text
                || node instanceof SoftLineBreak
                || node instanceof Emphasis
                || node instanceof StrongEmphasis;
    }
}
