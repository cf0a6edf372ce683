package org.groundline.bank.file;

import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.scanner.StreamReader;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Builds the tree from the parser's events, which still show anchors, aliases and tags, so that
/// they can be refused before they do anything.
final class YamlTree {
    private static final int DEEPEST = 20;

    private final Iterator<Event> events;
    private int depth;

    private YamlTree(String text) {
        // The parser copies what it has of a long scalar each time its buffer ends; with the whole
        // file in it, it never does.
        LoadSettings settings = LoadSettings.builder().setBufferSize(text.length() + 1).build();
        events = new Parse(settings).parseString(text).iterator();
    }

    static Yaml of(String text) throws YamlFault {
        refuseUnprintable(text);
        try {
            return new YamlTree(text).document();
        } catch (MarkedYamlEngineException e) {
            int line = e.getProblemMark().or(e::getContextMark).map(YamlTree::line).orElse(1);
            throw syntax(line, e.getProblem());
        } catch (YamlEngineException e) {
            throw syntax(1, String.valueOf(e.getMessage()).lines().findFirst().orElse(""));
        }
    }

    /// What the parser would refuse without telling where.
    private static void refuseUnprintable(String text) throws YamlFault {
        int line = 1;
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            int c = text.codePointAt(i);
            line += c == '\n' ? 1 : 0;
            if (!StreamReader.isPrintable(c)) {
                throw new YamlFault(
                        Rule.CHARACTER,
                        line,
                        "the file contains the invisible character U+%04X".formatted(c),
                        "remove it and type the text again");
            }
        }
    }

    private static YamlFault syntax(int line, String problem) {
        return new YamlFault(
                Rule.YAML_SYNTAX,
                line,
                "this is not YAML: " + problem,
                "check indentation, and put quotes around a text that contains ': ' or begins with"
                        + " a sign such as *, [, { or &");
    }

    private Yaml document() throws YamlFault {
        events.next();
        Event first = events.next();
        if (first.getEventId() == Event.ID.StreamEnd) {
            throw new YamlFault(Rule.SHAPE, 1, "the file is empty", "fill it or remove it");
        }
        Yaml root = node(events.next());
        events.next();
        Event after = events.next();
        if (after.getEventId() != Event.ID.StreamEnd) {
            throw feature(after, "a second document", "keep one document in a file, without '---'");
        }
        return root;
    }

    private Yaml node(Event event) throws YamlFault {
        refuseExtras(event);
        return switch (event) {
            case ScalarEvent scalar -> new Yaml.Text(text(scalar), line(scalar));
            case CollectionStartEvent start -> collection(start);
            default -> throw feature(event, "an alias (*)", "write the text out again");
        };
    }

    private Yaml collection(CollectionStartEvent start) throws YamlFault {
        if (++depth > DEEPEST) {
            throw new YamlFault(
                    Rule.NESTING,
                    line(start),
                    "lists and mappings are nested more than " + DEEPEST + " deep",
                    "no part of a bank file needs that; check the brackets");
        }
        Yaml node = start instanceof MappingStartEvent ? fields(start) : items(start);
        depth--;
        return node;
    }

    private Yaml items(Event start) throws YamlFault {
        List<Yaml> items = new ArrayList<>();
        Event next = events.next();
        while (next.getEventId() != Event.ID.SequenceEnd) {
            items.add(node(next));
            next = events.next();
        }
        return new Yaml.Items(items, line(start));
    }

    private Yaml fields(Event start) throws YamlFault {
        Map<String, Yaml.Field> fields = new LinkedHashMap<>();
        Event next = events.next();
        while (next.getEventId() != Event.ID.MappingEnd) {
            Yaml.Field field = field(next);
            if (fields.putIfAbsent(field.key(), field) != null) {
                throw new YamlFault(
                        Rule.DUPLICATE_KEY,
                        field.line(),
                        "the key '" + field.key() + "' stands twice in one mapping",
                        "remove one of the two");
            }
            next = events.next();
        }
        return new Yaml.Fields(fields, line(start));
    }

    private Yaml.Field field(Event keyEvent) throws YamlFault {
        if (!(node(keyEvent) instanceof Yaml.Text(String key, int line))) {
            throw feature(keyEvent, "a list or mapping as a key", "write a plain word as the key");
        }
        return new Yaml.Field(key, line, node(events.next()));
    }

    private static void refuseExtras(Event event) throws YamlFault {
        if (!(event instanceof AliasEvent)
                && event instanceof NodeEvent node
                && node.getAnchor().isPresent()) {
            throw feature(event, "an anchor (&)", "remove it and write texts out where needed");
        }
        Optional<String> tag =
                switch (event) {
                    case ScalarEvent scalar -> scalar.getTag();
                    case CollectionStartEvent start -> start.getTag();
                    default -> Optional.empty();
                };
        if (tag.isPresent()) {
            throw feature(event, "a tag (!)", "remove it, or put quotes around the text");
        }
    }

    private static YamlFault feature(Event event, String what, String remedy) {
        String problem = what + " is not allowed in a bank file";
        return new YamlFault(Rule.YAML_FEATURE, line(event), problem, remedy);
    }

    /// The scalar's text in Unicode's composed form, so that the same letters are the same bytes.
    private static String text(ScalarEvent scalar) throws YamlFault {
        String text = scalar.getValue().strip();
        Optional<String> bad = Characters.findForbidden(text);
        if (bad.isPresent()) {
            throw new YamlFault(
                    Rule.CHARACTER,
                    line(scalar),
                    "the text contains the invisible character " + bad.get(),
                    "remove it and type the text again");
        }
        return Normalizer.normalize(text, Normalizer.Form.NFC);
    }

    private static int line(Event event) {
        return event.getStartMark().map(YamlTree::line).orElse(1);
    }

    private static int line(Mark mark) {
        return mark.getLine() + 1;
    }
}
