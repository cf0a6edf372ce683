package org.groundline.bank.numeric.working;

import org.groundline.bank.numeric.goal.Interval;
import org.groundline.bank.numeric.goal.Key;
import org.groundline.bank.numeric.goal.Slips;
import org.groundline.bank.numeric.goal.Tolerance;
import org.groundline.bank.numeric.posed.PosedNumber.MistakeRange;
import org.groundline.measure.Rounding;

import java.util.ArrayList;
import java.util.List;

/// Which typed answers point to which mistake, for one case of a template.
public final class MistakeRanges {
    /// A mistake nearer to the key than this many tolerances is none for these values.
    public static final double APART = 3;

    private static final int SLIP_DIGITS = 4;
    private static final int NO_STEP = 0;

    private final Key key;
    private final double answer;
    private final Interval accepted;
    private final double lowest;
    private final double highest;
    private final double apart;
    private final List<MistakeRange> ranges = new ArrayList<>();
    private final List<Span> spans = new ArrayList<>();

    /// A range as doubles: thousands of items a second are compared.
    private record Span(double low, double high) {}

    private MistakeRanges(Key key, double answer, Interval accepted) {
        this.key = key;
        this.answer = answer;
        this.accepted = accepted;
        this.lowest = accepted.lowest().doubleValue();
        this.highest = accepted.highest().doubleValue();
        this.apart = APART * key.tolerance().of(answer);
    }

    /// Whether a wrong result is far enough from the answer to be told apart from it.
    public static boolean isApart(double mistake, double answer, Tolerance tolerance) {
        return Math.abs(mistake - answer) >= APART * tolerance.of(answer);
    }

    /// The mistakes that these values tell apart from the key, and from each other by one
    /// tolerance; then the slips.
    static List<MistakeRange> of(
            Instance instance, List<Mistake> mistakes, Key key, Interval accepted) {
        var all = new MistakeRanges(key, instance.answer(), accepted);
        all.addMistakes(instance, mistakes);
        key.slips().units().forEach(all::add);
        key.slips().powers().forEach(all::add);
        return all.ranges;
    }

    private void addMistakes(Instance instance, List<Mistake> mistakes) {
        var kept = new ArrayList<Double>();
        for (int i = 0; i < mistakes.size(); i++) {
            double wrong = instance.mistake(i);
            if (isApart(wrong, answer, key.tolerance())
                    && kept.stream().allMatch(k -> differs(k, wrong, key.tolerance()))) {
                kept.add(wrong);
                addMistake(mistakes.get(i), wrong);
            }
        }
    }

    private static boolean differs(double one, double other, Tolerance tolerance) {
        return Math.abs(one - other) >= tolerance.of(one);
    }

    /// The mistake's own tolerance, at most a quarter of its distance from the key. As that
    /// distance is three of the key's tolerances or more, and rounding moves a value by at most two
    /// of them, this cannot touch the accepted interval.
    private void addMistake(Mistake mistake, double wrong) {
        double reach = Math.min(key.tolerance().of(wrong), Math.abs(wrong - answer) / 4);
        var shown = key.printed(wrong);
        var interval = Interval.of(wrong - reach, wrong + reach).with(shown);
        spans.add(new Span(wrong - reach, wrong + reach));
        ranges.add(
                new MistakeRange(
                        mistake.cause(),
                        mistake.step(),
                        shown,
                        interval.lowest(),
                        interval.highest()));
    }

    /// Whoever would be right but for the unit.
    private void add(Slips.InUnit slip) {
        double wrong = slip.of(answer);
        var span = new Span(slip.of(lowest), slip.of(highest));
        if (isFarFromKey(span) && isNew(wrong)) {
            var shown = Rounding.significant(wrong, SLIP_DIGITS);
            var interval = Interval.of(span.low(), span.high()).with(shown);
            spans.add(span);
            ranges.add(
                    new MistakeRange(
                            slip.cause(), NO_STEP, shown, interval.lowest(), interval.highest()));
        }
    }

    /// Whoever would be right but for the power of ten.
    private void add(Slips.OfTen slip) {
        var span = new Span(lowest * slip.factor(), highest * slip.factor());
        if (isFarFromKey(span) && isNew(answer * slip.factor())) {
            spans.add(span);
            ranges.add(
                    new MistakeRange(
                            slip.cause(),
                            NO_STEP,
                            key.printed(answer).scaleByPowerOfTen(slip.exponent()),
                            accepted.lowest().scaleByPowerOfTen(slip.exponent()),
                            accepted.highest().scaleByPowerOfTen(slip.exponent())));
        }
    }

    /// All of a slip's interval keeps the distance of a mistake from what is accepted.
    private boolean isFarFromKey(Span span) {
        return span.low() > highest + apart || span.high() < lowest - apart;
    }

    private boolean isNew(double wrong) {
        for (Span span : spans) {
            if (wrong >= span.low() && wrong <= span.high()) {
                return false;
            }
        }
        return true;
    }
}
