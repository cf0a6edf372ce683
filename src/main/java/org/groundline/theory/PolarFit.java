package org.groundline.theory;

import java.util.List;
import java.util.function.ToDoubleFunction;

/// The parabola of least squares through measured points of a polar.
///
/// Airspeeds are counted from their mean m in units of their standard deviation d, x = (V − m) / d,
/// so that all sums are of like size. On them the polynomials 1, x and y = x² − e x − 1, with e the
/// mean of x³, are orthogonal: the normal equations fall apart into three of one unknown each.
final class PolarFit {
    /// Below this mean square of y there are in effect only two different airspeeds.
    private static final double NO_CURVE = 1e-9;

    private final List<Polar.Point> points;
    private final double mean;
    private final double deviation;

    private PolarFit(List<Polar.Point> points) {
        this.points = points;
        mean = average(Polar.Point::airspeed);
        deviation = Math.sqrt(average(p -> (p.airspeed() - mean) * (p.airspeed() - mean)));
    }

    static Polar of(List<Polar.Point> points) {
        if (points.size() < 3) {
            throw tooFew("points", points.size());
        }
        return new PolarFit(List.copyOf(points)).polar();
    }

    private Polar polar() {
        if (!(deviation > 0)) {
            throw tooFew("different airspeeds", 1);
        }
        double skew = average(p -> x(p) * x(p) * x(p));
        ToDoubleFunction<Polar.Point> y = p -> x(p) * x(p) - skew * x(p) - 1;
        double size = average(p -> y.applyAsDouble(p) * y.applyAsDouble(p));
        if (size < NO_CURVE) {
            throw tooFew("different airspeeds", 2);
        }
        double curve = average(p -> y.applyAsDouble(p) * p.sinkRate()) / size;
        double slope = average(p -> x(p) * p.sinkRate()) - skew * curve;
        double level = average(Polar.Point::sinkRate) - curve;
        return inAirspeed(curve, slope, level);
    }

    /// w = curve x² + slope x + level, told in the airspeed itself.
    private Polar inAirspeed(double curve, double slope, double level) {
        double shift = mean / deviation;
        return new Polar(
                curve / (deviation * deviation),
                (slope - 2 * curve * shift) / deviation,
                (curve * shift - slope) * shift + level);
    }

    private double x(Polar.Point point) {
        return (point.airspeed() - mean) / deviation;
    }

    private double average(ToDoubleFunction<Polar.Point> value) {
        return points.stream().mapToDouble(value).sum() / points.size();
    }

    private static IllegalArgumentException tooFew(String what, int count) {
        return new IllegalArgumentException(
                "number of %s must be 3 or more, but is %d".formatted(what, count));
    }
}
