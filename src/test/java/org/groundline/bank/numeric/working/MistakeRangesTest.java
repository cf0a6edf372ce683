package org.groundline.bank.numeric.working;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.numeric.formula.Formula;
import org.groundline.bank.numeric.formula.Scope;
import org.groundline.bank.numeric.goal.Key;
import org.groundline.bank.numeric.goal.Range;
import org.groundline.bank.numeric.goal.Tolerance;
import org.groundline.bank.numeric.posed.Cause;
import org.groundline.bank.numeric.posed.PosedNumber.MistakeRange;
import org.groundline.measure.Rounding;
import org.groundline.measure.Rounding.Side;
import org.groundline.measure.Unit;
import org.groundline.measure.Units;
import org.junit.jupiter.api.Test;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

class MistakeRangesTest {
    private static final double[] NONE = {};

    @Test
    void threeTolerancesAreFarEnough() {
        var tolerance = new Tolerance(0.05, 0, 1);
        assertThat(MistakeRanges.isApart(115, 100, tolerance)).isTrue();
        assertThat(MistakeRanges.isApart(85, 100, tolerance)).isTrue();
        assertThat(MistakeRanges.isApart(114.9, 100, tolerance)).isFalse();
    }

    @Test
    void whoeverWouldBeRightButForTheUnitIsToldSo() {
        var ranges = ranges("km/h", 36, 0.02);
        assertThat(causeOf(ranges, "10")).contains(new Cause.OtherUnit("m/s", "km/h"));
        assertThat(causeOf(ranges, "10.2")).contains(new Cause.OtherUnit("m/s", "km/h"));
        assertThat(causeOf(ranges, "10.3")).isEmpty();
        assertThat(causeOf(ranges, "19.44")).contains(new Cause.OtherUnit("kt", "km/h"));
    }

    @Test
    void whoeverWouldBeRightButForAPowerOfTenIsToldSo() {
        var ranges = ranges("kg", 95, 0.02);
        assertThat(causeOf(ranges, "950")).contains(new Cause.PowerOfTen(1));
        assertThat(causeOf(ranges, "9500")).contains(new Cause.PowerOfTen(2));
        assertThat(causeOf(ranges, "95000")).contains(new Cause.PowerOfTen(3));
        assertThat(causeOf(ranges, "9.5")).contains(new Cause.PowerOfTen(-1));
        assertThat(causeOf(ranges, "0.95")).contains(new Cause.PowerOfTen(-2));
        assertThat(causeOf(ranges, "0.095")).contains(new Cause.PowerOfTen(-3));
        assertThat(causeOf(ranges, "0")).isEmpty();
    }

    /// 3 km for 3000 m is a thousandth, too; the unit says more.
    @Test
    void ofTwoSlipsWithOneResultTheUnitIsMeant() {
        var ranges = ranges("m", 3_000, 0.02);
        assertThat(causeOf(ranges, "3")).contains(new Cause.OtherUnit("km", "m"));
        assertThat(ranges).extracting(MistakeRange::cause).doesNotContain(new Cause.PowerOfTen(-3));
    }

    @Test
    void aMistakeOfTheTemplateComesBeforeASlip() {
        var idea = new Cause.Idea("units-mixed");
        var key = key("km/h", 0.02);
        var instance = new Instance(NONE, 36, new double[] {10});
        var formula = Formula.read("10 [km/h]", new Scope(Map.of()));
        var ranges = ranges(instance, List.of(new Mistake(idea, formula, 0)), key);
        assertThat(causeOf(ranges, "10")).contains(idea);
        assertThat(ranges)
                .extracting(MistakeRange::cause)
                .doesNotContain(new Cause.OtherUnit("m/s", "km/h"));
    }

    /// At 20 % three tolerances are 0.6 of the answer beyond an accepted 1.2: kt (0.54 times a
    /// value in km/h) are within, m/s (0.28 times) are not apart either, ten times is.
    @Test
    void aSlipThatReachesWithinThreeTolerancesOfWhatIsAcceptedIsNone() {
        for (double share : new double[] {0.02, 0.05, 0.1, 0.2}) {
            for (MistakeRange range : ranges("km/h", 36, share)) {
                double apart = 3 * 36 * share;
                boolean below = range.highest().doubleValue() < 36 * (1 - share) - apart;
                boolean above = range.lowest().doubleValue() > 36 * (1 + share) + apart;
                assertThat(below || above).as("%s at %s", range, share).isTrue();
            }
        }
        assertThat(ranges("km/h", 36, 0.2))
                .extracting(MistakeRange::cause)
                .contains(new Cause.PowerOfTen(1))
                .doesNotContain(
                        new Cause.OtherUnit("kt", "km/h"), new Cause.OtherUnit("m/s", "km/h"));
    }

    @Test
    void anAnswerOfZeroHasNoSlips() {
        assertThat(ranges("m", 0, 0.02)).isEmpty();
    }

    private static Key key(String symbol, double share) {
        Unit unit = Units.get(symbol);
        var rounding = new Rounding(new BigDecimal("0.01"), Side.NEAREST);
        return new Key(unit, rounding, new Tolerance(share, 0, 0.005), new Range(-1e6, 1e6), true);
    }

    private static List<MistakeRange> ranges(String symbol, double answer, double share) {
        var instance = new Instance(NONE, answer, NONE);
        return ranges(instance, List.of(), key(symbol, share));
    }

    private static List<MistakeRange> ranges(Instance instance, List<Mistake> mistakes, Key key) {
        return MistakeRanges.of(instance, mistakes, key, key.accepted(instance.answer()));
    }

    private static Optional<Cause> causeOf(List<MistakeRange> ranges, String given) {
        return ranges.stream()
                .filter(r -> r.lowest().compareTo(new BigDecimal(given)) <= 0)
                .filter(r -> r.highest().compareTo(new BigDecimal(given)) >= 0)
                .map(MistakeRange::cause)
                .findFirst();
    }
}
