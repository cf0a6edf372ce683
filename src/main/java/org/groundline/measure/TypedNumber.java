package org.groundline.measure;

import org.groundline.measure.Reading.Read;
import org.groundline.measure.Reading.Unreadable;

import java.math.BigDecimal;
import java.math.MathContext;
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

    private static Read unsigned(Read read, Unit expected, DecimalConvention convention) {
        BigDecimal size = read.value().abs();
        return new Read(
                size, read.echo() + ", read as " + print(shown(size), expected, convention));
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
        return new Read(converted, echo(value, unit.get(), converted, expected, convention));
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
