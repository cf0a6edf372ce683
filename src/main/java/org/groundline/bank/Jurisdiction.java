package org.groundline.bank;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Where a rule of air law holds, and in which edition it was read.
///
/// @param code two capital letters: a country by ISO 3166-1, or `EU`
/// @param edition the regulation and the edition that the question was written from
public record Jurisdiction(String code, String edition) {
    private static final Pattern FORM = Pattern.compile("([A-Z]{2}): (\\S.{2,})");

    /// Reads `EU: Regulation (EU) 923/2012, consolidated text of December 2024`.
    ///
    /// @return empty where the text has another form
    static Optional<Jurisdiction> find(String text) {
        Matcher form = FORM.matcher(text);
        return form.matches()
                ? Optional.of(new Jurisdiction(form.group(1), form.group(2)))
                : Optional.empty();
    }

    /// As it is written in a question.
    public String text() {
        return code + ": " + edition;
    }
}
