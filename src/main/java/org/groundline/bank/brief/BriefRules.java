package org.groundline.bank.brief;

import static java.util.stream.Collectors.joining;

import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.Block;
import org.commonmark.node.BulletList;
import org.commonmark.node.Document;
import org.commonmark.node.Emphasis;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;

/// What a brief's Markdown may have, and how long it may be: it is one printed page.
public final class BriefRules {
    private static final int FEWEST_WORDS = 250;
    private static final int MOST_WORDS = 750;

    private static final Set<Class<? extends Node>> PLAIN =
            Set.of(
                    Document.class,
                    Paragraph.class,
                    BulletList.class,
                    OrderedList.class,
                    ListItem.class,
                    TableBlock.class,
                    TableHead.class,
                    TableBody.class,
                    TableRow.class,
                    TableCell.class,
                    Emphasis.class,
                    StrongEmphasis.class,
                    SoftLineBreak.class,
                    ObjectiveMarks.class);

    private final Notes notes;
    private final int first;

    /// @param first line of the file on which the text begins, counted from 1
    public BriefRules(Notes notes, int first) {
        this.notes = notes;
        this.first = first;
    }

    /// Notes whatever a brief may not have.
    public void check(Node document) {
        checkBelow(document);
        int words = words(document);
        if (words < FEWEST_WORDS || words > MOST_WORDS) {
            notes.add(
                    Rule.LENGTH,
                    first,
                    "the text has %d words".formatted(words),
                    "write %d to %d, which fit one page".formatted(FEWEST_WORDS, MOST_WORDS));
        }
    }

    /// The line of a node in the file, or of what it stands in where it has none itself.
    public int line(Node node) {
        Node place = node;
        while (place.getSourceSpans().isEmpty() && place.getParent() != null) {
            place = place.getParent();
        }
        return place.getSourceSpans().isEmpty()
                ? first
                : first + place.getSourceSpans().getFirst().getLineIndex();
    }

    private void checkBelow(Node node) {
        for (Node child : Nodes.children(node).toList()) {
            Optional<Fault> fault = fault(child);
            fault.ifPresent(
                    f -> notes.add(Rule.MARKDOWN, line(child), "the text " + f.problem, f.remedy));
            if (fault.isEmpty()) {
                checkBelow(child);
            }
        }
    }

    private record Fault(String problem, String remedy) {}

    private static Optional<Fault> fault(Node node) {
        return switch (node) {
            case Heading heading when heading.getLevel() != 2 && heading.getLevel() != 3 ->
                    fault(
                            "has a heading of level " + heading.getLevel(),
                            "write ## or ###; the topic's title stands above by itself");
            case Heading heading -> Optional.empty();
            case Text text when text.getLiteral().matches("(?s).*[{}].*") ->
                    fault(
                            "has a brace that marks no objective",
                            "write marks such as {EQU-1.2} at the end of a heading or paragraph");
            case Text text -> Optional.empty();
            case FigureBlock figure -> fault(figure);
            case Image image ->
                    fault("has a picture inside a text", "give it a paragraph of its own");
            case Link link -> fault("has a link", "write plainly, and cite under 'sources'");
            case LinkReferenceDefinition link ->
                    fault("has a link", "write plainly, and cite under 'sources'");
            case HtmlBlock html -> fault("has HTML", "write it in Markdown");
            case HtmlInline html -> fault("has HTML", "write it in Markdown");
            default -> PLAIN.contains(node.getClass()) ? Optional.empty() : other(node);
        };
    }

    private static Optional<Fault> fault(FigureBlock figure) {
        if (figure.isTitled()) {
            return fault("has a picture with a title", "write it into the caption");
        }
        return figure.getFirstChild() == null
                ? fault("has a picture without a caption", "say in a few words what to see")
                : Optional.empty();
    }

    private static Optional<Fault> other(Node node) {
        return fault(
                "has Markdown of the kind " + node.getClass().getSimpleName(),
                "use headings, paragraphs, lists, tables, *emphasis* and **strong emphasis**");
    }

    private static Optional<Fault> fault(String problem, String remedy) {
        return Optional.of(new Fault(problem, remedy));
    }

    private static int words(Node document) {
        String text = Nodes.below(document).map(BriefRules::text).collect(joining());
        return (int) Arrays.stream(text.split("\\s+")).filter(BriefRules::isWord).count();
    }

    /// A new block ends a word, emphasis does not.
    private static String text(Node node) {
        return switch (node) {
            case Text text -> text.getLiteral();
            case SoftLineBreak line -> " ";
            case Block block -> " ";
            case TableCell cell -> " ";
            default -> "";
        };
    }

    private static boolean isWord(String text) {
        return text.codePoints().anyMatch(Character::isLetterOrDigit);
    }
}
