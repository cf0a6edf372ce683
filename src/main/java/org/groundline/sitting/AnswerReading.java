package org.groundline.sitting;

import org.groundline.bank.Shown;
import org.groundline.error.Refusal;
import org.groundline.measure.DecimalConvention;
import org.groundline.measure.Reading;
import org.groundline.measure.Sign;
import org.groundline.measure.TypedNumber;
import org.groundline.measure.TypedNumber.Way;
import org.groundline.measure.Unit;
import org.groundline.measure.Units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// What the program makes of what a student gave: a letter, or a decimal in the item's unit.
///
/// @param text kept beside the raw answer and compared with the key; says nothing of right or wrong
/// @param echo shown to the student, so that a misreading is seen at once
public record AnswerReading(String text, String echo) {
    private static final BigDecimal LARGEST = new BigDecimal("1e15");
    private static final int PLACES = 12;

    /// Reads an answer to an item.
    ///
    /// @throws Refusal.Invalid if it is no option of the item, or no number that can be read
    public static AnswerReading of(Shown shown, String raw, Locale language) {
        return switch (shown) {
            case Shown.Choice choice -> letter(choice, raw.strip());
            case Shown.Number number -> number(number, raw, language);
        };
    }

    private static AnswerReading letter(Shown.Choice choice, String raw) {
        boolean known =
                raw.length() == 1
                        && raw.charAt(0) >= 'A'
                        && raw.charAt(0) < 'A' + choice.options().size();
        if (!known) {
            char last = (char) ('A' + choice.options().size() - 1);
            throw new Refusal.Invalid(
                    "answer",
                    "An answer to this question is a letter from A to %s.".formatted(last));
        }
        return new AnswerReading(raw, raw);
    }

    /// The two numbers that an answer such as 1.200 could be; empty where there is but one, or
    /// none.
    public static List<Way> findWays(Shown shown, String raw, Locale language) {
        return switch (shown) {
            case Shown.Choice choice -> List.of();
            case Shown.Number number ->
                    TypedNumber.findWays(
                            raw, Units.get(number.unit()), convention(language), sign(number));
        };
    }

    /// The unit in which a number was typed; empty for a letter and where nothing can be read.
    public static Optional<Unit> findUnit(Shown shown, String raw, Locale language) {
        return switch (shown) {
            case Shown.Choice choice -> Optional.empty();
            case Shown.Number number ->
                    switch (read(number, raw, language)) {
                        case Reading.Unreadable unreadable -> Optional.empty();
                        case Reading.Read read -> Optional.of(read.unit());
                    };
        };
    }

    private static Reading read(Shown.Number shown, String raw, Locale language) {
        return TypedNumber.read(raw, Units.get(shown.unit()), convention(language), sign(shown));
    }

    private static AnswerReading number(Shown.Number shown, String raw, Locale language) {
        return switch (read(shown, raw, language)) {
            case Reading.Unreadable(String why) -> throw new Refusal.Invalid("answer", why);
            case Reading.Read read ->
                    new AnswerReading(
                            plain(read.value()), certain(shown, raw, language, read.echo()));
        };
    }

    /// The echo; where the language decided, it also says which number was not taken.
    private static String certain(Shown shown, String raw, Locale language, String echo) {
        List<Way> ways = findWays(shown, raw, language);
        return ways.isEmpty() ? echo : echo + ", not " + ways.getLast().label();
    }

    private static Sign sign(Shown.Number shown) {
        return shown.signed() ? Sign.COUNTS : Sign.NONE;
    }

    private static String plain(BigDecimal value) {
        if (value.abs().compareTo(LARGEST) > 0) {
            throw new Refusal.Invalid(
                    "answer", "This number is far too large to be an answer here.");
        }
        return value.setScale(PLACES, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
    }

    private static DecimalConvention convention(Locale language) {
        char mark = java.text.DecimalFormatSymbols.getInstance(language).getDecimalSeparator();
        return mark == ',' ? DecimalConvention.COMMA : DecimalConvention.DOT;
    }
}
