package org.groundline.web.request;

import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.text.TextContentRenderer;

/// Turns the bank's Markdown into HTML. Markup in it is shown as text, and addresses that would run
/// something are dropped, so that what an author writes can never act on a reader's page.
public final class Markdown {
    private static final Parser PARSER = Parser.builder().build();
    private static final HtmlRenderer RENDERER =
            HtmlRenderer.builder().escapeHtml(true).sanitizeUrls(true).build();

    private Markdown() {}

    /// Returns paragraphs, lists and emphasis as HTML.
    public static String blocks(String text) {
        return RENDERER.render(PARSER.parse(text));
    }

    /// Returns the words alone, without marks of emphasis.
    public static String plain(String text) {
        return TextContentRenderer.builder().build().render(PARSER.parse(text)).strip();
    }

    /// Returns text as HTML that shows it as it stands.
    public static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /// Returns one paragraph's content as HTML, for use inside another element.
    public static String inline(String text) {
        String html = blocks(text).strip();
        boolean single =
                html.startsWith("<p>") && html.endsWith("</p>") && html.indexOf("<p>", 3) < 0;
        return single ? html.substring(3, html.length() - 4) : html;
    }
}
