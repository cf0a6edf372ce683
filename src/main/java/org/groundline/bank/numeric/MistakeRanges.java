package org.groundline.bank.numeric;

import org.groundline.bank.numeric.PosedNumber.MistakeRange;

import java.util.ArrayList;
import java.util.List;

/// Which typed answers point to which mistake.
final class MistakeRanges {
    /// A mistake nearer to the key than this many tolerances is none for these values.
    static final double APART = 3;

    private MistakeRanges() {}

    static boolean isApart(double mistake, double answer, Tolerance tolerance) {
        return Math.abs(mistake - answer) >= APART * tolerance.of(answer);
    }

    /// The mistakes that these values tell apart from the key, and from each other by one
    /// tolerance.
    static List<MistakeRange> of(Instance instance, List<Mistake> mistakes, Key key) {
        var ranges = new ArrayList<MistakeRange>();
        var kept = new ArrayList<Double>();
        for (int i = 0; i < mistakes.size(); i++) {
            double wrong = instance.mistake(i);
            if (isApart(wrong, instance.answer(), key.tolerance())
                    && kept.stream().allMatch(k -> differs(k, wrong, key.tolerance()))) {
                kept.add(wrong);
                ranges.add(range(mistakes.get(i).misconception(), wrong, instance.answer(), key));
            }
        }
        return ranges;
    }

    private static boolean differs(double one, double other, Tolerance tolerance) {
        return Math.abs(one - other) >= tolerance.of(one);
    }

    /// The mistake's own tolerance, at most a quarter of its distance from the key. As that
    /// distance is three of the key's tolerances or more, and rounding moves a value by at most two
    /// of them, this cannot touch the accepted interval.
    private static MistakeRange range(String misconception, double wrong, double answer, Key key) {
        double reach = Math.min(key.tolerance().of(wrong), Math.abs(wrong - answer) / 4);
        var shown = key.printed(wrong);
        var interval = Interval.of(wrong - reach, wrong + reach).with(shown);
        return new MistakeRange(misconception, shown, interval.lowest(), interval.highest());
    }
}
