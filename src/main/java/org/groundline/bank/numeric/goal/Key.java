package org.groundline.bank.numeric.goal;

import org.groundline.measure.Rounding;
import org.groundline.measure.Rounding.Side;
import org.groundline.measure.Unit;

import java.math.BigDecimal;

/// How a computed answer is printed and which typed answers are accepted.
///
/// @param signed whether a typed minus counts
/// @param slips those that are looked for in a wrong answer
public record Key(
        Unit unit, Rounding rounding, Tolerance tolerance, Range range, boolean signed, Slips slips)
        implements Goal {
    static final String AT = "answer";

    private static final int UNROUNDED_DIGITS = 5;

    /// A key that looks for all slips which its unit allows.
    public Key(Unit unit, Rounding rounding, Tolerance tolerance, Range range, boolean signed) {
        this(unit, rounding, tolerance, range, signed, Slips.at(unit));
    }

    @Override
    public String at() {
        return AT;
    }

    /// No typed answer is too close to call: the tolerance decides.
    @Override
    public boolean isClear(double value) {
        return true;
    }

    @Override
    public BigDecimal printed(double value) {
        return rounding.round(value);
    }

    /// The accepted answers: the tolerance around the unrounded value, half as wide on the side
    /// that would end short of the field, and always the printed answer.
    ///
    /// Rounded down (a distance that can be reached) too much is unsafe, rounded up (a height that
    /// is needed) too little.
    public Interval accepted(double value) {
        double full = tolerance.of(value);
        double below = rounding.side() == Side.UP ? full / 2 : full;
        double above = rounding.side() == Side.DOWN ? full / 2 : full;
        return Interval.of(value - below, value + above).with(printed(value));
    }

    @Override
    public String line(double value) {
        var exact = Rounding.significant(value, UNROUNDED_DIGITS);
        String printed = unit.print(printed(value));
        if (exact.compareTo(printed(value)) == 0) {
            return "The answer is " + printed + ".";
        }
        String how =
                switch (rounding.side()) {
                    case DOWN -> "rounded down to be safe";
                    case UP -> "rounded up to be safe";
                    case NEAREST -> "rounded";
                };
        return "The answer is " + unit.print(exact) + ", " + how + ": " + printed + ".";
    }
}
