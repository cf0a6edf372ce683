package org.groundline.bank;

import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/// How options should be written, after the same guidelines as [StemRules].
final class OptionRules {
    private static final double LONG_KEY_RATIO = 1.5;
    private static final int LONG_KEY_CHARACTERS = 15;

    private static final Pattern ALL_OR_NONE =
            Pattern.compile(
                    "(all|none|any|neither|both) (of )?(the |these |those )?"
                            + "(above|answers?|options?|these|those|others?)( .{0,30})?");
    private static final Pattern COMBINATION =
            Pattern.compile(
                    "(only )?\\(?([a-d]|[ivx]+|[1-9])\\)?"
                            + "((, | and | or |, and )\\(?([a-d]|[ivx]+|[1-9])\\)?)+( only)?"
                            + "|(only )?\\(?([a-d]|[ivx]+|[1-9])\\)? only"
                            + "|\\(([a-d]|[ivx]+|[1-9])\\)");
    private static final Pattern LETTER =
            Pattern.compile("\\b([Oo]ptions?|[Aa]nswers?|[Cc]hoices?) \\*{0,2}([A-D])\\b");

    private static final Pattern MARKS = Pattern.compile("[*_\"'“”‘’]");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Pattern STOPS = Pattern.compile("[.!?;,:]+$");

    private OptionRules() {}

    /// @param sections where the options stand, in the same order
    static void check(Section question, List<Section> sections, List<Option> options) {
        long keys = options.stream().filter(Option.Right.class::isInstance).count();
        if (keys != 1 && !options.isEmpty()) {
            question.note(
                    Rule.ONE_KEY,
                    "options",
                    "has " + keys + " keys",
                    "mark exactly one option with 'key: true'");
        }
        checkTexts(sections, options.stream().map(Option::text).toList());
        checkKeyLength(question, options);
    }

    /// @param sections where the options stand, in the same order
    static void checkTexts(List<Section> sections, List<String> texts) {
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < texts.size(); i++) {
            checkOption(sections.get(i), normal(texts.get(i)), i, seen);
        }
    }

    private static void checkOption(
            Section option, String text, int index, Map<String, Integer> seen) {
        Integer equal = seen.putIfAbsent(text, index);
        if (equal != null && !text.isEmpty()) {
            String problem = "says the same as option " + (equal + 1);
            option.note(Rule.OPTIONS_EQUAL, "text", problem, "let each option say something else");
        }
        if (ALL_OR_NONE.matcher(text).matches()) {
            option.note(
                    Rule.OPTION_ALL_OR_NONE,
                    "text",
                    "refers to the other options as a whole",
                    "each option stands for itself, write an answer of its own");
        } else if (COMBINATION.matcher(text).matches()) {
            option.note(
                    Rule.OPTION_COMBINATION,
                    "text",
                    "combines other answers",
                    "write out what it claims, or ask one thing at a time");
        }
    }

    private static void checkKeyLength(Section question, List<Option> options) {
        int key = longest(options, Option.Right.class);
        int distractor = longest(options, Option.Wrong.class);
        if (distractor > 0
                && key > LONG_KEY_RATIO * distractor
                && key >= distractor + LONG_KEY_CHARACTERS) {
            question.note(
                    Rule.LONG_KEY,
                    "options",
                    "has a key of %d characters beside distractors of at most %d"
                            .formatted(key, distractor),
                    "shorten the key or fill the distractors, as length gives it away");
        }
    }

    private static int longest(List<Option> options, Class<? extends Option> kind) {
        return options.stream()
                .filter(kind::isInstance)
                .mapToInt(option -> option.text().length())
                .max()
                .orElse(0);
    }

    /// A rationale may not name options by their letters.
    static void checkRationale(Section question, String rationale) {
        if (LETTER.matcher(rationale).find()) {
            question.note(
                    Rule.OPTION_LETTER,
                    "rationale",
                    "refers to an option by its letter",
                    "letters are shuffled, name the option by its idea");
        }
    }

    /// What two texts have in common that say the same: no case, emphasis, spacing or final stop.
    static String normal(String text) {
        String folded = Normalizer.normalize(text, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
        String unmarked = MARKS.matcher(folded).replaceAll("");
        String spaced = SPACES.matcher(unmarked).replaceAll(" ");
        return STOPS.matcher(spaced).replaceAll("").strip();
    }
}
