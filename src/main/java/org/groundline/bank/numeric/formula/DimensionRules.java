package org.groundline.bank.numeric.formula;

import org.groundline.measure.Dimension;

/// What may be added, compared and raised to a power.
final class DimensionRules {
    private static final int GREATEST_EXPONENT = 12;

    private DimensionRules() {}

    /// Fails with both dimensions unless they are the same, as in "`height + wind` adds a length
    /// (m) and a speed (m/s)".
    static void requireSame(
            String verb, Expression first, String joint, Expression second, String whole) {
        if (!first.dimension().equals(second.dimension())) {
            throw new FormulaFault(
                    "`%s` %s %s %s %s"
                            .formatted(whole, verb, first.dimension(), joint, second.dimension()),
                    "make both the same kind of quantity");
        }
    }

    /// A dimension can be raised to a fixed whole or half exponent only; a plain number to any.
    static Dimension power(Expression base, Expression exponent) {
        String whole = base + " ^ " + exponent;
        if (!exponent.dimension().equals(Dimension.NUMBER)) {
            throw new FormulaFault(
                    "the exponent in `%s` is %s".formatted(whole, exponent.dimension()),
                    "an exponent is a plain number");
        }
        if (base.dimension().equals(Dimension.NUMBER)) {
            return Dimension.NUMBER;
        }
        double halves = exponent.isConstant() ? 2 * exponent.value(new double[0]) : Double.NaN;
        if (halves != Math.rint(halves) || Math.abs(halves) > 2 * GREATEST_EXPONENT) {
            throw new FormulaFault(
                    "`%s` raises %s to a power that is not fixed, whole or half, up to %d"
                            .formatted(whole, base.dimension(), GREATEST_EXPONENT),
                    "divide by a quantity of the same kind first");
        }
        return halves % 2 == 0
                ? base.dimension().power((int) halves / 2)
                : base.dimension().root(2).power((int) halves);
    }
}
