package org.groundline.bank.numeric.goal;

import org.groundline.bank.numeric.source.Decimals;
import org.groundline.bank.numeric.source.Faults;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/// The values that are plausible, both ends included.
public record Range(double least, double most) {
    static Optional<Range> read(String at, List<String> ends, Faults faults) {
        List<BigDecimal> range = ends.stream().flatMap(end -> Decimals.find(end).stream()).toList();
        if (ends.size() != 2 || range.size() != 2 || range.get(0).compareTo(range.get(1)) >= 0) {
            faults.add(
                    at,
                    ends.isEmpty() ? "it is missing" : ends + " is no range",
                    "give the plausible range in the answer's unit, such as [200, 8000]");
            return Optional.empty();
        }
        return Optional.of(
                new Range(range.getFirst().doubleValue(), range.getLast().doubleValue()));
    }

    /// Whether the value lies between the ends or on one of them.
    public boolean holds(double value) {
        return value >= least && value <= most;
    }
}
