package org.groundline.web.student;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/// The form of an item as a browser finds it in a page: its hidden fields, and what may be chosen.
record PageForm(String html, Map<String, String> hidden) {
    private static final Pattern HIDDEN =
            Pattern.compile("<input type=\"hidden\" name=\"(\\w+)\" value=\"([^\"]*)\">");

    static PageForm in(String html) {
        Map<String, String> hidden = new LinkedHashMap<>();
        HIDDEN.matcher(html).results().forEach(found -> hidden.put(found.group(1), found.group(2)));
        return new PageForm(html, hidden);
    }

    /// The fields of the form, with further ones as name and value in turn.
    Map<String, String> with(String... more) {
        Map<String, String> fields = new LinkedHashMap<>(hidden);
        for (int i = 0; i < more.length; i += 2) {
            fields.put(more[i], more[i + 1]);
        }
        return fields;
    }

    /// The letter of the option with a text.
    String letterOf(String text) {
        return find("value=\"([A-D])\"[^>]*> <span class=\"text\"[^>]*>" + Pattern.quote(text));
    }

    /// What the first group of a pattern finds in the page.
    String find(String pattern) {
        return Pattern.compile(pattern)
                .matcher(html)
                .results()
                .map((MatchResult found) -> found.group(1))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + pattern + " in " + html));
    }
}
