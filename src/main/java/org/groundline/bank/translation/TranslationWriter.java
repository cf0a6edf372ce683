package org.groundline.bank.translation;

import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.StreamDataWriter;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/// Writes a file of translations as a person would: in the order of the English, one key a line,
/// long texts as folded blocks.
final class TranslationWriter {
    private static final int WIDTH = 90;
    private static final String MODELINE = "# yaml-language-server: $schema=%s\n";
    private static final DumpSettings SETTINGS =
            DumpSettings.builder()
                    .setIndent(2)
                    .setIndicatorIndent(2)
                    .setIndentWithIndicator(true)
                    .setWidth(WIDTH)
                    .setDefaultFlowStyle(FlowStyle.BLOCK)
                    .build();

    private static final Pattern NEXT_ENTRY = Pattern.compile("(?m)(?<!:\n)^ {2}- id: ");
    private static final Pattern NEXT_LIST = Pattern.compile("(?m)^(?=(topics|objectives):\n)");

    private TranslationWriter() {}

    /// The text of a file.
    ///
    /// @param file its name in the folder of the language, which tells the schema
    /// @param translations what stands in it, in the order of the English; at least one
    static String write(String file, List<Translation> translations) {
        List<NodeTuple> root = new ArrayList<>();
        String topic = translations.getFirst().original().topic();
        if (!topic.isEmpty()) {
            root.add(tuple("topic", topic));
        }
        for (Kind kind : Kind.values()) {
            List<Node> entries =
                    translations.stream()
                            .filter(t -> t.original().kind() == kind)
                            .map(TranslationWriter::entry)
                            .toList();
            if (!entries.isEmpty()) {
                root.add(new NodeTuple(text(kind.list()), list(entries)));
            }
        }
        return MODELINE.formatted(schema(file)) + spaced(dump(mapping(root)));
    }

    private static String schema(String file) {
        String up = "../".repeat(1 + file.split("/").length - 1);
        String name = file.contains("/") ? "topic.yaml" : file;
        return up + "schema/translated-" + name.replace(".yaml", ".schema.json");
    }

    private static Node entry(Translation translation) {
        List<NodeTuple> entry = new ArrayList<>();
        entry.add(tuple("id", translation.original().id()));
        putIfThere(entry, "follows", translation.follows());
        putIfThere(entry, "seen", translation.seen());
        for (Part part : translation.original().parts()) {
            if (!part.isOption()) {
                entry.add(tuple(part.name(), translation.text(part.name())));
            } else if (part.name().equals("option 1")) {
                List<Node> options =
                        translation.options().stream().map(TranslationWriter::text).toList();
                entry.add(new NodeTuple(text("options"), list(options)));
            }
        }
        return mapping(entry);
    }

    private static void putIfThere(List<NodeTuple> entry, String key, String value) {
        if (!value.isEmpty()) {
            entry.add(tuple(key, value));
        }
    }

    private static NodeTuple tuple(String key, String value) {
        return new NodeTuple(text(key), text(value));
    }

    /// A long text as a folded block, which ends with a line break that readers strip. One with
    /// spaces that folding could not keep is left to quotes.
    private static Node text(String value) {
        boolean plain = !value.contains("  ") && !value.contains("\n ") && !value.contains(" \n");
        boolean folded = plain && (value.length() > WIDTH - 20 && value.contains(" "));
        return folded && value.length() != 64
                ? new ScalarNode(Tag.STR, value + "\n", ScalarStyle.FOLDED)
                : new ScalarNode(Tag.STR, value, ScalarStyle.PLAIN);
    }

    private static Node list(List<Node> items) {
        return new SequenceNode(Tag.SEQ, items, FlowStyle.BLOCK);
    }

    private static Node mapping(List<NodeTuple> entries) {
        return new MappingNode(Tag.MAP, entries, FlowStyle.BLOCK);
    }

    private static String dump(Node root) {
        StringWriter out = new StringWriter();
        new Dump(SETTINGS)
                .dumpNode(
                        root,
                        new StreamDataWriter() {
                            @Override
                            public void write(String text) {
                                out.write(text);
                            }

                            @Override
                            public void write(String text, int offset, int length) {
                                out.write(text, offset, length);
                            }
                        });
        return out.toString();
    }

    /// A blank line before each entry but the first of its list, and before each list of a syllabus
    /// but the first. Text within an entry stands further in, so that it cannot be taken for one.
    private static String spaced(String yaml) {
        String entries = NEXT_ENTRY.matcher(yaml).replaceAll("\n  - id: ");
        return NEXT_LIST.matcher(entries).replaceAll("\n");
    }
}
