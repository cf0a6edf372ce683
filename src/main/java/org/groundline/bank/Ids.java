package org.groundline.bank;

import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;

import java.util.regex.Pattern;

/// The forms of ids.
final class Ids {
    private static final Pattern KEBAB = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final int LONGEST = 64;

    private Ids() {}

    /// An id of words, such as `leg-straps-open`.
    static String words(Section section) {
        String remedy = "give it one of small letters, digits and hyphens";
        String id = section.text("id", remedy);
        if (!id.isEmpty() && (!KEBAB.matcher(id).matches() || id.length() > LONGEST)) {
            String example = "write small letters, digits and single hyphens, at most 64";
            section.note(Rule.ID_FORM, "id", "has the id '" + id + "'", example);
        }
        return id;
    }

    /// An id of the syllabus, which begins with that of what it belongs to.
    static String numbered(Section section, String prefix, String suffix, String example) {
        String id = section.text("id", "write one such as " + example);
        if (!id.isEmpty() && !id.matches(Pattern.quote(prefix) + suffix)) {
            String remedy = "write one such as " + example;
            section.note(Rule.ID_FORM, "id", "has the id '" + id + "'", remedy);
        }
        return id;
    }
}
