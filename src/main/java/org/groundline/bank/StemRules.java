package org.groundline.bank;

import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// How a stem should be written (after T. M. Haladyna, S. M. Downing and M. C. Rodriguez, *A review
/// of multiple-choice item-writing guidelines for classroom assessment*, Applied Measurement in
/// Education 15, 2002; guidelines on idea and direction in the stem, and on negatives).
final class StemRules {
    private static final int FEWEST_WORDS = 4;
    private static final Pattern BLANK_START = Pattern.compile("(_{2,}|\\.{3,}|…)");
    private static final Pattern LAST_SENTENCE = Pattern.compile("(?s)(?:.*[.?!:]\\s+)?(\\S.*)");

    /// A negative word in small letters that does not stand in emphasis; `at least` is none, nor is
    /// the airspeed of `least sink`.
    private static final Pattern PLAIN_NEGATIVE =
            Pattern.compile(
                    "(?<![*\\w])(?<!\\bat )"
                            + "(?<word>[Nn]ot|[Nn]ever|[Ee]xcept|[Ll]east(?! sink)|[Ff]alse|[Ii]ncorrect)"
                            + "(?![*\\w])");

    private StemRules() {}

    static void check(Section section, String stem) {
        if (stem.isEmpty()) {
            return;
        }
        if (BLANK_START.matcher(stem).lookingAt()) {
            section.note(
                    Rule.BLANK_START,
                    "stem",
                    "has a stem that begins with a blank",
                    "put the question first and the blank last, or ask a whole question");
        }
        if (stem.split("\\s+").length < FEWEST_WORDS) {
            section.note(
                    Rule.SHORT_STEM,
                    "stem",
                    "has a stem of fewer than " + FEWEST_WORDS + " words",
                    "let it ask a whole question");
        }
        checkNegative(section, stem);
    }

    /// The negative counts in the sentence that asks; in the story before it, it is no trap.
    private static void checkNegative(Section section, String stem) {
        Matcher last = LAST_SENTENCE.matcher(stem);
        Matcher negative = PLAIN_NEGATIVE.matcher(last.matches() ? last.group(1) : stem);
        if (negative.find()) {
            section.note(
                    Rule.NEGATIVE_STEM,
                    "stem",
                    "asks with the negative word '" + negative.group("word") + "'",
                    "ask positively, or write it as **"
                            + negative.group("word").toUpperCase(Locale.ROOT)
                            + "**");
        }
    }
}
