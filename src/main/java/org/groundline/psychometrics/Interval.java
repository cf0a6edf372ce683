package org.groundline.psychometrics;

/// A range that a true share is likely to lie in, both from 0 to 1.
public record Interval(double low, double high) {
    public Interval {
        if (!(0 <= low && low <= high && high <= 1)) {
            throw new IllegalArgumentException(
                    "an interval of shares is 0 ≤ low ≤ high ≤ 1: " + low + " to " + high);
        }
    }
}
