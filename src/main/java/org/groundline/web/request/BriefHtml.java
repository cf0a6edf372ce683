package org.groundline.web.request;

import static java.util.stream.Collectors.joining;

import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.HtmlWriter;
import org.groundline.bank.Brief;
import org.groundline.bank.Figure;
import org.groundline.bank.brief.BriefMarkdown;
import org.groundline.bank.brief.FigureBlock;
import org.groundline.bank.brief.ObjectiveMarks;
import org.groundline.diagram.Purpose;
import org.groundline.measure.Unit;
import org.groundline.measure.Units;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/// Turns a brief into HTML, its pictures in it. What an author writes can never act on a reader's
/// page: the reader of the bank lets no HTML and no links through, and nor does this.
public final class BriefHtml {
    /// The space between a number and its unit.
    private static final Pattern BEFORE_UNIT =
            Pattern.compile(
                    Units.all().stream()
                            .map(Unit::symbol)
                            .filter(symbol -> !symbol.isEmpty())
                            .map(Pattern::quote)
                            .collect(joining("|", "(?<=\\d) (?=(?:", ")(?![\\p{L}/]))")));

    private static final String THIN_NO_BREAK_SPACE = "\u202F";

    private BriefHtml() {}

    /// @param lowered by how many levels its headings stand below those of a page of its own
    /// @param objectives the word before marks of objectives, for who cannot see where they stand
    public static String of(Brief brief, int lowered, String objectives) {
        Node text = BriefMarkdown.parse(brief.text());
        for (Heading heading : BriefMarkdown.all(text, Heading.class)) {
            heading.setLevel(heading.getLevel() + lowered);
        }
        for (Text part : BriefMarkdown.all(text, Text.class)) {
            part.setLiteral(BEFORE_UNIT.matcher(part.getLiteral()).replaceAll(THIN_NO_BREAK_SPACE));
        }
        return HtmlRenderer.builder()
                .extensions(List.of(TablesExtension.create()))
                .escapeHtml(true)
                .sanitizeUrls(true)
                .attributeProviderFactory(context -> BriefHtml::describe)
                .nodeRendererFactory(context -> new Parts(context, brief, objectives))
                .build()
                .render(text);
    }

    /// Tells what a heading of a table heads; how its text is set is the style sheet's business.
    private static void describe(Node node, String tag, Map<String, String> attributes) {
        if (node instanceof TableCell cell) {
            attributes.remove("align");
            if (cell.isHeader()) {
                attributes.put("scope", "col");
            }
        }
    }

    /// What CommonMark does not know.
    private static final class Parts implements NodeRenderer {
        private final HtmlNodeRendererContext context;
        private final HtmlWriter html;
        private final Brief brief;
        private final String objectives;
        private int figures;

        Parts(HtmlNodeRendererContext context, Brief brief, String objectives) {
            this.context = context;
            this.html = context.getWriter();
            this.brief = brief;
            this.objectives = objectives;
        }

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(FigureBlock.class, ObjectiveMarks.class);
        }

        @Override
        public void render(Node node) {
            switch (node) {
                case FigureBlock figure -> figure(figure);
                case ObjectiveMarks marks -> marks(marks);
                default -> throw new IllegalStateException("not asked for: " + node);
            }
        }

        private void figure(FigureBlock block) {
            figures++;
            Figure figure = brief.figures().get(block.destination());
            if (figure == null) {
                throw new IllegalStateException("the bank let a brief through without a picture");
            }
            String id = "figure-%s-%d".formatted(brief.topic(), figures);
            html.line();
            html.tag("figure", Map.of("class", "diagram"));
            html.raw(figure.draw(Purpose.SOLUTION, id).svg());
            html.tag("figcaption");
            children(block);
            html.tag("/figcaption");
            html.tag("/figure");
            html.line();
        }

        private void children(Node parent) {
            for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
                context.render(child);
            }
        }

        private void marks(ObjectiveMarks marks) {
            html.raw(" ");
            html.tag("span", Map.of("class", "objectives"));
            html.tag("span", Map.of("class", "unseen"));
            html.text(objectives + " ");
            html.tag("/span");
            html.text(String.join(" ", marks.objectives()));
            html.tag("/span");
        }
    }
}
