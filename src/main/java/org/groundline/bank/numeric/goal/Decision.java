package org.groundline.bank.numeric.goal;

import org.groundline.bank.numeric.posed.Cause;
import org.groundline.bank.numeric.posed.PosedOption;
import org.groundline.bank.numeric.source.Wording;
import org.groundline.measure.Rounding;
import org.groundline.measure.Unit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/// Options of which one is right, by the interval that holds the computed value.
///
/// @param bounds ascending, in `unit`
/// @param options one more than bounds, from below the lowest to above the highest
public record Decision(
        Unit unit,
        Tolerance tolerance,
        Range range,
        List<BigDecimal> bounds,
        List<Decision.Choice> options)
        implements Goal {
    static final String AT = "decide";

    /// A value nearer to a bound than this many tolerances is too close to call.
    static final double CLEAR = 2;

    private static final int DIGITS = 4;

    /// An option, and why one takes it wrongly.
    public record Choice(Wording text, Cause.Idea cause) {
        /// The option as shown: right, or with the wrong idea behind it.
        public PosedOption posed(boolean right, Map<String, String> drawn) {
            String words = text.with(drawn);
            return right ? new PosedOption.Right(words) : new PosedOption.Wrong(words, cause);
        }
    }

    @Override
    public String at() {
        return AT;
    }

    @Override
    public boolean isClear(double value) {
        double apart = CLEAR * tolerance.of(value);
        return bounds.stream().allMatch(b -> Math.abs(value - b.doubleValue()) >= apart);
    }

    /// The place of the option that is right for this value; a bound belongs to the option above.
    public int right(double value) {
        int place = 0;
        while (place < bounds.size() && value >= bounds.get(place).doubleValue()) {
            place++;
        }
        return place;
    }

    /// The text of the option that is right for this value.
    public String option(double value, Map<String, String> drawn) {
        return options.get(right(value)).text().with(drawn);
    }

    @Override
    public BigDecimal printed(double value) {
        return Rounding.significant(value, DIGITS);
    }

    /// "The result is −45 m: below 0 m."
    @Override
    public String line(double value) {
        return "The result is %s: %s.".formatted(unit.print(printed(value)), place(right(value)));
    }

    private String place(int option) {
        if (option == 0) {
            return "below " + unit.print(bounds.getFirst());
        }
        if (option == bounds.size()) {
            return "above " + unit.print(bounds.getLast());
        }
        return "between %s and %s"
                .formatted(unit.print(bounds.get(option - 1)), unit.print(bounds.get(option)));
    }
}
