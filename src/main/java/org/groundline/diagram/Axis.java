package org.groundline.diagram;

import org.groundline.measure.Rounding;
import org.groundline.measure.Units;

import java.util.ArrayList;
import java.util.List;

/// A scale along one edge of a plot: values of one unit on a line of the picture.
///
/// @param low the value at the position `start`
/// @param high the value at the position `end`
record Axis(double low, double high, double start, double end) {
    private static final double NOISE = 1e-9;

    double at(double value) {
        return start + (value - low) * perUnit();
    }

    /// Units of the picture for one of the value.
    double perUnit() {
        return (end - start) / (high - low);
    }

    /// All multiples of a step on the axis.
    List<Double> multiples(double step) {
        var multiples = new ArrayList<Double>();
        long last = (long) Math.floor(high / step + NOISE);
        for (long i = (long) Math.ceil(low / step - NOISE); i <= last; i++) {
            multiples.add(i * step);
        }
        return multiples;
    }

    /// The first step whose multiples lie at least so far apart; the last where none does.
    double step(double apart, double... steps) {
        for (double step : steps) {
            if (Math.abs(perUnit()) * step >= apart) {
                return step;
            }
        }
        return steps[steps.length - 1];
    }

    static String print(double value) {
        return Units.NUMBER.print(Rounding.trusted(value));
    }
}
