package org.groundline.measure;

import org.groundline.measure.Reading.Read;
import org.groundline.measure.Reading.Unreadable;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/// The one reader of numbers that people type: `5,3 km`, `5.3km`, `5300`, `5 300 m`, `1'200 m`, `1½
/// h`.
///
/// Without a unit the expected one is meant; another unit of the same dimension is converted. Where
/// `1.200` could be two numbers the language decides, and the echo tells which one was taken.
public final class TypedNumber {
    public static final int LONGEST = 64;

    private static final MathContext SHOWN = new MathContext(6);

    /// Three decimals could be a group of a thousand; four could not.
    private static final int CERTAIN_DECIMALS = 4;

    private static final Pattern SPACES = Pattern.compile("[\\s\\u00A0\\u2007\\u2009\\u202F]");
    private static final Pattern HYPHENS = Pattern.compile("[\\u2010-\\u2013\\u2212]");
    private static final Pattern APOSTROPHES = Pattern.compile("[’ʼ`´]");
    private static final Pattern PARTS =
            Pattern.compile(
                    "(?<sign>[+-]?) *(?<digits>[0-9., '#]*[0-9.,#]|) *(?<unit>.*?)\\.?"
                            .replace("#", VulgarFraction.CHARACTERS));

    private TypedNumber() {}

    /// Reads a number of something that may have either sign.
    public static Reading read(String typed, Unit expected, DecimalConvention convention) {
        return read(typed, expected, convention, Sign.COUNTS);
    }

    /// Reads a number. Where no sign counts, the echo tells that a minus was left out.
    public static Reading read(
            String typed, Unit expected, DecimalConvention convention, Sign sign) {
        return switch (readSigned(typed, expected, convention)) {
            case Unreadable unreadable -> unreadable;
            case Read read ->
                    sign == Sign.NONE && read.value().signum() < 0
                            ? unsigned(read, expected, convention)
                            : read;
        };
    }

    /// The two numbers that the text could be, as it could where somebody types 1.200: the one that
    /// the language decides for, then the other. Empty where there is but one.
    ///
    /// Each is written so that it reads as itself.
    public static List<Way> findWays(
            String typed, Unit expected, DecimalConvention convention, Sign sign) {
        return read(typed, expected, convention, sign) instanceof Read taken
                        && read(typed, expected, convention.other(), sign) instanceof Read other
                        && taken.value().compareTo(other.value()) != 0
                ? List.of(
                        way(typed, expected, convention, convention),
                        way(typed, expected, convention.other(), convention))
                : List.of();
    }

    /// Whether a text has digits that could be two numbers, at a first look.
    public static boolean hasUnclearDigits(String typed) {
        return Numeral.AMBIGUOUS.matcher(typed).find();
    }

    /// One of two numbers that a text could be.
    ///
    /// @param label for the person, such as "1.2 km"
    /// @param text to be typed instead, which could be no other number
    public record Way(String label, String text) {}

    private static Way way(
            String typed, Unit expected, DecimalConvention reading, DecimalConvention printing) {
        var parts = PARTS.matcher(plain(typed));
        if (!parts.matches()) {
            throw new IllegalArgumentException("no number: " + typed);
        }
        var size = Numeral.read(parts.group("digits"), reading).orElseThrow().stripTrailingZeros();
        var value = parts.group("sign").equals("-") ? size.negate() : size;
        var unit = Units.find(parts.group("unit")).filter(u -> !u.symbol().isEmpty());
        var whole = value.setScale(Math.max(0, value.scale()));
        var certain = value.scale() > 0 ? value.setScale(CERTAIN_DECIMALS) : whole;
        Unit shown = unit.orElse(expected);
        return new Way(print(whole, shown, printing), print(certain, shown, printing));
    }

    private static Read unsigned(Read read, Unit expected, DecimalConvention convention) {
        BigDecimal size = read.value().abs();
        return new Read(
                size,
                read.unit(),
                read.echo() + ", read as " + print(shown(size), expected, convention));
    }

    private static Reading readSigned(String typed, Unit expected, DecimalConvention convention) {
        if (typed.length() > LONGEST) {
            return new Unreadable("More than " + LONGEST + " characters are no number.");
        }
        var parts = PARTS.matcher(plain(typed));
        if (!parts.matches() || parts.group("digits").isEmpty()) {
            return new Unreadable(noNumber(typed, expected));
        }
        Optional<BigDecimal> size = Numeral.read(parts.group("digits"), convention);
        if (size.isEmpty()) {
            return new Unreadable(noNumber(typed, expected));
        }
        var value = parts.group("sign").equals("-") ? size.get().negate() : size.get();
        return inUnit(value, parts.group("unit"), expected, convention);
    }

    private static Reading inUnit(
            BigDecimal value, String symbol, Unit expected, DecimalConvention convention) {
        Optional<Unit> unit = symbol.isEmpty() ? Optional.of(expected) : Units.find(symbol);
        if (unit.isEmpty()) {
            return new Unreadable(
                    "“%s” is no unit known here; the answer is %s."
                            .formatted(symbol, wanted(expected)));
        }
        if (!unit.get().dimension().equals(expected.dimension())) {
            return new Unreadable(
                    "“%s” is %s, but the answer is %s."
                            .formatted(symbol, unit.get().dimension(), wanted(expected)));
        }
        var converted = unit.get().convert(value, expected);
        return new Read(
                converted, unit.get(), echo(value, unit.get(), converted, expected, convention));
    }

    private static String echo(
            BigDecimal value,
            Unit unit,
            BigDecimal converted,
            Unit expected,
            DecimalConvention convention) {
        String asTyped = print(value, unit, convention);
        if (unit.equals(expected)) {
            return asTyped;
        }
        String sign = shown(converted).compareTo(converted) == 0 ? " = " : " ≈ ";
        return asTyped + sign + print(shown(converted), expected, convention);
    }

    private static BigDecimal shown(BigDecimal value) {
        return value.round(SHOWN).stripTrailingZeros();
    }

    private static String print(BigDecimal value, Unit unit, DecimalConvention convention) {
        return unit.print(value.toPlainString().replace('.', convention.mark()));
    }

    private static String plain(String typed) {
        String spaced = SPACES.matcher(typed).replaceAll(" ").strip();
        String signed = HYPHENS.matcher(spaced).replaceAll("-");
        return APOSTROPHES.matcher(signed).replaceAll("'");
    }

    private static String noNumber(String typed, Unit expected) {
        Optional<String> inexact = VulgarFraction.findInexact(typed);
        if (inexact.isPresent()) {
            return "%s has no exact decimal. Write as many decimals as you need, such as %s."
                    .formatted(inexact.get(), expected.print("0.33"));
        }
        return typed.isBlank()
                ? "Nothing was typed; the answer is %s.".formatted(wanted(expected))
                : "“%s” is no number. Write it like %s or %s."
                        .formatted(typed.strip(), expected.print("5.3"), expected.print("5300"));
    }

    private static String wanted(Unit expected) {
        return expected.symbol().isEmpty()
                ? "a plain number"
                : "%s in %s".formatted(bare(expected.dimension()), expected);
    }

    /// The dimension without its SI unit.
    private static String bare(Dimension dimension) {
        return dimension.toString().replaceAll(" \\(.*\\)", "");
    }
}
