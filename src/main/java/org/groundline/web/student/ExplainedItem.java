package org.groundline.web.student;

import org.groundline.bank.Belief;
import org.groundline.bank.Key;
import org.groundline.bank.Shown;
import org.groundline.diagram.Purpose;
import org.groundline.measure.Unit;
import org.groundline.measure.Units;
import org.groundline.sitting.Item;
import org.groundline.sitting.Mark;
import org.groundline.sitting.Verdict;
import org.groundline.web.request.Figures;
import org.groundline.web.request.Markdown;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// An item with its answer, its key and its reasons: what may be shown once nothing hangs on it any
/// more.
///
/// @param language of all texts of the item, a BCP 47 tag
/// @param stem as HTML
/// @param stemFigures the drawing beside the stem, as HTML; empty where there is none, or where the
///   one that explains the answer shows it with more
/// @param options as HTML; empty where a number was typed
/// @param given what the student gave; empty where nothing was given
/// @param rightAnswer as HTML
/// @param accepted which numbers count as right; empty where a letter was chosen
/// @param feedback what a wrong answer suggests, a clause; empty where nothing is known
/// @param truth what is right instead, a sentence; empty where nothing is known
/// @param rationale as HTML
/// @param steps the worked solution; empty where there is none
/// @param figures the drawing that explains the answer, as HTML; empty where there is none
public record ExplainedItem(
        ItemWords words,
        int position,
        boolean right,
        String language,
        String stem,
        String stemFigures,
        List<Option> options,
        String given,
        String rightAnswer,
        String accepted,
        String feedback,
        String truth,
        String rationale,
        List<Step> steps,
        String figures,
        String source) {
    public ExplainedItem {
        options = List.copyOf(options);
        steps = List.copyOf(steps);
    }

    /// An option after the answer.
    ///
    /// @param text as HTML
    public record Option(String letter, String text, boolean key, boolean chosen) {}

    /// A line of the worked solution.
    ///
    /// @param text as HTML
    /// @param here what went wrong at this line, a clause; empty where nothing is known
    public record Step(String text, String here) {}

    /// What the student gave.
    ///
    /// @param echo for the student, such as "5.3 km = 5300 m"
    /// @param reading what is marked: a letter, or a decimal in the item's unit
    /// @param unit in which a number was typed
    record Given(String echo, String reading, Optional<Unit> unit) {}

    /// Puts what is known of an answered item together.
    ///
    /// @param given empty where nothing was given
    static ExplainedItem of(ItemWords words, Item item, Key key, Mark mark, Optional<Given> given) {
        String answer = given.map(Given::echo).orElse("");
        List<Option> options = options(item.shown(), key, answer);
        return new ExplainedItem(
                words,
                item.position(),
                mark.verdict() == Verdict.RIGHT,
                item.language(),
                Markdown.inline(item.shown().stem()),
                stemFigures(item, key),
                options,
                answer,
                rightAnswer(key, options, given.flatMap(Given::unit)),
                accepted(words, key),
                mark.belief().map(Belief::feedback).orElse(""),
                mark.belief().map(Belief::right).orElse(""),
                Markdown.blocks(key.rationale()),
                steps(words, key, given),
                Figures.html(key.figures(), Purpose.SOLUTION, "figure-" + item.position()),
                words.source(String.join("; ", key.sources()), item.objective()));
    }

    private static String stemFigures(Item item, Key key) {
        return key.figures().isEmpty()
                ? Figures.html(
                        item.shown().figures(), Purpose.STEM, "stem-figure-" + item.position())
                : "";
    }

    private static List<Option> options(Shown shown, Key key, String answer) {
        if (!(shown instanceof Shown.Choice choice) || !(key instanceof Key.Choice right)) {
            return List.of();
        }
        return AskedItem.choices(choice).stream()
                .map(
                        c ->
                                new Option(
                                        c.letter(),
                                        c.text(),
                                        c.letter().equals(right.letter()),
                                        c.letter().equals(answer)))
                .toList();
    }

    private static String rightAnswer(Key key, List<Option> options, Optional<Unit> typed) {
        return switch (key) {
            case Key.Choice choice ->
                    options.stream()
                            .filter(Option::key)
                            .map(Option::text)
                            .findFirst()
                            .orElseThrow();
            case Key.Number number -> rightNumber(number, typed);
        };
    }

    /// The right answer in the item's unit, and in the one that was typed where that is another.
    private static String rightNumber(Key.Number key, Optional<Unit> typed) {
        Unit unit = Units.get(key.unit());
        String right = unit.print(key.answer());
        return typed.filter(t -> !t.equals(unit))
                .map(t -> right + equal(unit.convert(key.answer(), t), t))
                .orElse(right);
    }

    private static String equal(BigDecimal exact, Unit unit) {
        BigDecimal shown = inFourDigits(exact, RoundingMode.HALF_EVEN);
        return (shown.compareTo(exact) == 0 ? " = " : " ≈ ") + unit.print(shown);
    }

    private static String accepted(ItemWords words, Key key) {
        return switch (key) {
            case Key.Choice choice -> "";
            case Key.Number number -> {
                Unit unit = Units.get(number.unit());
                yield words.counted(
                        unit.print(inFourDigits(number.lowest(), RoundingMode.CEILING)),
                        unit.print(inFourDigits(number.highest(), RoundingMode.FLOOR)));
            }
        };
    }

    /// In four digits; a bound is rounded into its interval, so that whatever it covers is right.
    private static BigDecimal inFourDigits(BigDecimal value, RoundingMode mode) {
        BigDecimal rounded = value.round(new MathContext(4, mode)).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    private static List<Step> steps(ItemWords words, Key key, Optional<Given> given) {
        Optional<Key.Mistake> mistake = given.flatMap(g -> key.findMistake(g.reading()));
        List<Step> steps = new ArrayList<>();
        for (String step : key.steps()) {
            int position = steps.size() + 1;
            String here =
                    mistake.filter(m -> m.step() == position)
                            .map(m -> words.here(m.belief().feedback()))
                            .orElse("");
            steps.add(new Step(Markdown.inline(step), here));
        }
        return steps;
    }

    /// Whether a letter was to be chosen.
    public boolean choosing() {
        return !options.isEmpty();
    }

    /// Whether there is an answer at all.
    public boolean answered() {
        return !given.isEmpty();
    }

    /// What the student gave, as HTML: the text of an option, or the number as it was read.
    public String givenText() {
        return options.stream()
                .filter(Option::chosen)
                .map(Option::text)
                .findFirst()
                .orElseGet(() -> Markdown.inline(given));
    }
}
