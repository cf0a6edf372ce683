package org.groundline.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

class PolarFitTest {
    private static final Polar POLAR = new Polar(0.035, -0.63, 3.93);

    @Test
    void threePointsOfAPolarGiveThePolar() {
        assertClose(Polar.fitted(pointsAt(9, 11, 14)), POLAR);
    }

    @Test
    void manyPointsOfAPolarGiveThePolarInAnyOrder() {
        assertClose(Polar.fitted(pointsAt(13, 9, 9.5, 14.2, 10, 11, 9)), POLAR);
    }

    @Test
    void errorsThatCancelLeaveThePolarAlone() {
        var measured = new ArrayList<Polar.Point>();
        for (Polar.Point point : pointsAt(9, 10, 12, 14)) {
            measured.add(new Polar.Point(point.airspeed(), point.sinkRate() + 0.1));
            measured.add(new Polar.Point(point.airspeed(), point.sinkRate() - 0.1));
        }
        assertClose(Polar.fitted(measured), POLAR);
    }

    /// Four points, the normal equations solved by hand: with x = V − 11 the speeds are −2, −1, 1,
    /// 2 and the sums Σx² = 10, Σx⁴ = 34. From w = 1.1, 1.2, 1.3, 1.8: Σw = 5.4, Σxw = 1.5, Σx²w =
    /// 14.1, so that slope = 0.15, and 34 p + 10 r = 14.1, 10 p + 4 r = 5.4 give p = 1/15, r =
    /// 71/60.
    @Test
    void scatteredPointsGiveTheLeastSquaresSolvedByHand() {
        var fitted =
                Polar.fitted(
                        List.of(
                                new Polar.Point(9, 1.1),
                                new Polar.Point(10, 1.2),
                                new Polar.Point(12, 1.3),
                                new Polar.Point(13, 1.8)));
        double curve = 1 / 15.0;
        assertThat(fitted.a()).isCloseTo(curve, within(1e-12));
        assertThat(fitted.b()).isCloseTo(0.15 - 22 * curve, within(1e-11));
        assertThat(fitted.c()).isCloseTo(71 / 60.0 - 0.15 * 11 + 121 * curve, within(1e-10));
    }

    private static List<Polar.Point> pointsAt(double... airspeeds) {
        return DoubleStream.of(airspeeds)
                .mapToObj(v -> new Polar.Point(v, POLAR.sinkRate(v)))
                .toList();
    }

    private static void assertClose(Polar actual, Polar expected) {
        assertThat(actual.a()).isCloseTo(expected.a(), within(1e-10));
        assertThat(actual.b()).isCloseTo(expected.b(), within(1e-9));
        assertThat(actual.c()).isCloseTo(expected.c(), within(1e-8));
    }
}
