package org.groundline.bank;

import org.commonmark.node.Node;
import org.groundline.bank.Lists.TopicPlace;
import org.groundline.bank.brief.BriefMarkdown;
import org.groundline.bank.brief.BriefRules;
import org.groundline.bank.brief.FigureBlock;
import org.groundline.bank.file.HeadedText;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Reads a file of the folder `briefs`, which is named for its topic.
final class BriefFile {
    /// Far more than a page holds; what is longer is not read as Markdown at all.
    private static final int LONGEST = 20_000;

    private final Lists lists;
    private final Notes notes;

    private BriefFile(Lists lists, Notes notes) {
        this.lists = lists;
        this.notes = notes;
    }

    /// The brief, or empty after noting what is wrong with it.
    static Optional<Brief> read(Path file, Lists lists, Notes notes) {
        return HeadedText.read(file, notes)
                .flatMap(text -> new BriefFile(lists, notes).brief(text, BankFolder.briefId(file)));
    }

    private Optional<Brief> brief(HeadedText file, String name) {
        Section head = Section.of("the brief", file.head(), notes);
        head.allowOnly("topic", "sources", "diagrams");
        String topic = topic(head, name);
        Optional<TopicPlace> place = lists.topics().refer(head, "topic", topic);
        List<Citation> sources = new CitationReader(lists.sources(), "sources").citations(head);
        var diagrams = new BriefDiagrams(head);
        Map<String, Figure> figures = figures(file, diagrams, place);
        return notes.errors() > 0
                ? Optional.empty()
                : place.map(p -> new Brief(topic, p.module(), file.text(), figures, sources));
    }

    private static String topic(Section head, String name) {
        String topic = head.text("topic", "name the topic, such as EQU-1");
        if (!topic.isEmpty() && !topic.equals(name)) {
            head.note(
                    Rule.FILE_PLACE,
                    "topic",
                    "is of topic " + topic + " and lies in the file " + name + ".md",
                    "name the file " + topic + ".md");
        }
        return topic;
    }

    /// The pictures of the text, whose every rule is checked on the way.
    private Map<String, Figure> figures(
            HeadedText file, BriefDiagrams diagrams, Optional<TopicPlace> place) {
        if (file.text().length() > LONGEST) {
            String problem = "the text has %d characters".formatted(file.text().length());
            String remedy = "a brief is one page; write at most " + LONGEST;
            notes.add(Rule.LENGTH, file.line(), problem, remedy);
            return Map.of();
        }
        Node text = BriefMarkdown.parse(file.text());
        var rules = new BriefRules(notes, file.line());
        rules.check(text);
        place.ifPresent(p -> new BriefObjectives(lists, notes, p).check(text, rules));
        Map<String, Figure> figures = new LinkedHashMap<>();
        for (FigureBlock figure : BriefMarkdown.all(text, FigureBlock.class)) {
            figure(figure.destination(), rules.line(figure), diagrams)
                    .ifPresent(found -> figures.put(figure.destination(), found));
        }
        diagrams.noteUnused();
        return figures;
    }

    private Optional<Figure> figure(String destination, int line, BriefDiagrams diagrams) {
        if (destination.startsWith(BriefDiagrams.PREFIX)) {
            return diagrams.find(destination, notes, line);
        }
        Optional<String> illustration = BankFolder.illustrationAt(destination);
        if (illustration.isEmpty()) {
            notes.add(
                    Rule.VALUE,
                    line,
                    "the text has the picture '" + destination + "'",
                    "write ../illustrations/name.svg, or diagram:name for one of the head");
        }
        return illustration.flatMap(id -> illustration(id, line));
    }

    private Optional<Figure> illustration(String id, int line) {
        lists.illustrations().use(id);
        return lists.illustrations().find(id, notes, line, "the text").map(IllustratedFigure::of);
    }
}
