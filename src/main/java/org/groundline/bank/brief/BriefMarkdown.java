package org.groundline.bank.brief;

import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Block;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.Text;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// Reads a brief's Markdown (CommonMark with tables) into nodes. A paragraph that is a picture
/// becomes a [FigureBlock], and marks such as `{EQU-1.2}` at the end of a heading or paragraph
/// become [ObjectiveMarks] there.
public final class BriefMarkdown {
    private static final int DEEPEST = 8;
    private static final Parser PARSER =
            Parser.builder()
                    .extensions(List.of(TablesExtension.create()))
                    .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
                    .maxOpenBlockParsers(DEEPEST)
                    .maxInlineNesting(DEEPEST)
                    .build();
    private static final Pattern MARKS = Pattern.compile("(?:\\s*\\{[^{}]*})+\\s*$");
    private static final Pattern MARK = Pattern.compile("\\{([^{}]*)}");

    private BriefMarkdown() {}

    public static Node parse(String text) {
        Node document = PARSER.parse(text);
        for (Node node : Nodes.below(document).toList()) {
            if (node instanceof Heading || node instanceof Paragraph) {
                takeMarks(node);
            }
            if (node instanceof Paragraph paragraph) {
                setApart(paragraph);
            }
        }
        return document;
    }

    /// All nodes of a kind in a text, in their order.
    public static <T extends Node> List<T> all(Node document, Class<T> kind) {
        return Nodes.below(document).filter(kind::isInstance).map(kind::cast).toList();
    }

    private static void takeMarks(Node block) {
        List<String> ids = new ArrayList<>();
        List<SourceSpan> spans = block.getSourceSpans();
        boolean more = true;
        while (more) {
            Node last = block.getLastChild();
            if (last instanceof SoftLineBreak && !ids.isEmpty()) {
                last.unlink();
            } else if (last instanceof Text text && MARKS.matcher(text.getLiteral()).find()) {
                spans = text.getSourceSpans();
                ids.addAll(0, cut(text));
                more = text.getParent() == null;
            } else {
                more = false;
            }
        }
        if (!ids.isEmpty()) {
            var marks = new ObjectiveMarks(ids);
            marks.setSourceSpans(spans);
            block.appendChild(marks);
        }
    }

    /// Takes the marks out of a text, which leaves its place where nothing else is in it.
    private static List<String> cut(Text text) {
        String literal = text.getLiteral();
        Matcher marks = MARKS.matcher(literal);
        List<String> ids = new ArrayList<>();
        if (marks.find()) {
            MARK.matcher(marks.group()).results().map(BriefMarkdown::id).forEach(ids::add);
            text.setLiteral(literal.substring(0, marks.start()));
        }
        if (text.getLiteral().isEmpty()) {
            text.unlink();
        }
        return ids;
    }

    private static String id(MatchResult mark) {
        return mark.group(1).strip();
    }

    private static void setApart(Paragraph paragraph) {
        if (paragraph.getFirstChild() instanceof Image image && isAlone(image)) {
            var figure =
                    new FigureBlock(
                            image.getDestination(),
                            image.getTitle() != null && !image.getTitle().isEmpty());
            figure.setSourceSpans(paragraph.getSourceSpans());
            Stream.concat(Nodes.children(image), Nodes.children(paragraph).skip(1))
                    .toList()
                    .forEach(figure::appendChild);
            replace(paragraph, figure);
        }
    }

    private static boolean isAlone(Image image) {
        return image.getNext() == null
                || image.getNext() instanceof ObjectiveMarks marks && marks.getNext() == null;
    }

    private static void replace(Block block, Block by) {
        block.insertBefore(by);
        block.unlink();
    }
}
