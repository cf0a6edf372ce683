package org.groundline.bank.numeric.draw;

import org.groundline.measure.DecimalConvention;
import org.groundline.measure.Reading.Read;
import org.groundline.measure.Reading.Unreadable;
import org.groundline.measure.TypedNumber;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/// Values for the draws of a template, given by name instead of drawn. One that the stem does not
/// tell may be left out: nothing is computed with it but other draws, and these are given.
///
/// @param values in SI, in the order of the draws; empty where something is wrong
/// @param problems what is wrong, by the name concerned
public record Given(Optional<List<Double>> values, List<Map.Entry<String, String>> problems) {
    /// @param told the names of the draws that the stem or the drawing beside it tells
    public static Given read(Map<String, String> given, DrawSpace space, Set<String> told) {
        var problems = new ArrayList<Map.Entry<String, String>>();
        var values = new ArrayList<Double>();
        var unknown = new TreeSet<>(given.keySet());
        for (Draw draw : space.draws()) {
            unknown.remove(draw.name());
            if (!given.containsKey(draw.name()) && !told.contains(draw.name())) {
                values.add(Double.NaN);
                continue;
            }
            String text = given.getOrDefault(draw.name(), "");
            switch (TypedNumber.read(text, draw.unit(), DecimalConvention.DOT)) {
                case Read read -> values.add(draw.unit().toSi(read.value().doubleValue()));
                case Unreadable unreadable ->
                        problems.add(
                                Map.entry(
                                        draw.name(),
                                        given.containsKey(draw.name())
                                                ? unreadable.why()
                                                : "it is missing"));
            }
        }
        unknown.forEach(name -> problems.add(Map.entry(name, "no such value is drawn")));
        return new Given(
                problems.isEmpty() ? Optional.of(List.copyOf(values)) : Optional.empty(),
                List.copyOf(problems));
    }

    /// The values as formulas take them.
    public static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
