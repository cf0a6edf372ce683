package org.groundline.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/// A unit: SI value = value × numerator ÷ denominator + offset, with exact factors.
///
/// @param symbol as printed; empty for a plain number
/// @param offset where the scale starts, in SI; zero but for degrees Celsius and Fahrenheit
/// @param spellings further ways people type it
public record Unit(
        String symbol,
        Dimension dimension,
        BigDecimal numerator,
        BigDecimal denominator,
        BigDecimal offset,
        List<String> spellings) {
    private static final String THIN_NO_BREAK_SPACE = "\u202F";

    public Unit {
        spellings = List.copyOf(spellings);
    }

    public double toSi(double value) {
        return value * numerator.doubleValue() / denominator.doubleValue() + offset.doubleValue();
    }

    public double fromSi(double si) {
        return (si - offset.doubleValue()) * denominator.doubleValue() / numerator.doubleValue();
    }

    /// Converts a value of this unit to another unit of the same dimension, to 34 digits.
    public BigDecimal convert(BigDecimal value, Unit target) {
        if (!dimension.equals(target.dimension)) {
            throw new IllegalArgumentException(
                    "%s is %s, %s is %s"
                            .formatted(symbol, dimension, target.symbol, target.dimension));
        }
        if (equals(target)) {
            return value;
        }
        // (value · n/d + offset − target offset) · d′/n′, over one denominator so that it divides
        // once
        var numeratorOverBoth =
                value.multiply(numerator)
                        .add(offset.subtract(target.offset).multiply(denominator))
                        .multiply(target.denominator);
        return numeratorOverBoth.divide(
                denominator.multiply(target.numerator), MathContext.DECIMAL128);
    }

    /// A value for people: "38 km/h" with a thin space that does not break, "30°", "8.5".
    public String print(BigDecimal value) {
        return print(value.toPlainString());
    }

    String print(String value) {
        String gap = symbol.isEmpty() || symbol.equals("°") ? "" : THIN_NO_BREAK_SPACE;
        return value.replace('-', '−') + gap + symbol;
    }

    /// A short word for messages: the symbol, or "a plain number".
    @Override
    public String toString() {
        return symbol.isEmpty() ? "a plain number" : symbol;
    }
}
