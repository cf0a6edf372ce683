package org.groundline.measure;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/// The digits of a typed number, with groups of three and a decimal mark in any of the usual ways,
/// or with a fraction such as ½.
final class Numeral {
    /// 1 200, 1'200, 12 345 678.9
    private static final Pattern SPACED =
            Pattern.compile("\\d{1,3}([ '])\\d{3}(?:\\1\\d{3})*(?:[.,]\\d+)?");

    /// 1.200.300 and 1.200,5: what comes twice, or before another mark, separates groups.
    private static final Pattern MARKED =
            Pattern.compile(
                    "[1-9]\\d{0,2}([.,])\\d{3}(?:(?:\\1\\d{3})+|(?:\\1\\d{3})*(?!\\1)[.,]\\d+)");

    /// 1.200 and 1,200: a group or decimals, as the language has it. 0.200 and 1200.500 are
    /// neither.
    static final Pattern AMBIGUOUS = Pattern.compile("[1-9]\\d{0,2}([.,])\\d{3}");

    private static final Pattern PLAIN = Pattern.compile("\\d+(?:[.,]\\d+)?|[.,]\\d+");

    private Numeral() {}

    static Optional<BigDecimal> read(String text, DecimalConvention convention) {
        Optional<BigDecimal> fraction = VulgarFraction.find(text);
        if (fraction.isPresent()) {
            return fraction;
        }
        if (SPACED.matcher(text).matches()) {
            return decimal(text.replace(" ", "").replace("'", ""));
        }
        var marked = MARKED.matcher(text);
        if (marked.matches()) {
            return decimal(text.replace(marked.group(1), ""));
        }
        var ambiguous = AMBIGUOUS.matcher(text);
        if (ambiguous.matches() && ambiguous.group(1).charAt(0) != convention.mark()) {
            return decimal(text.replace(ambiguous.group(1), ""));
        }
        return PLAIN.matcher(text).matches() ? decimal(text) : Optional.empty();
    }

    private static Optional<BigDecimal> decimal(String text) {
        return Optional.of(new BigDecimal(text.replace(',', '.')));
    }
}
