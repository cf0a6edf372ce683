package org.groundline.diagram;

import static java.util.stream.Collectors.toSet;

import org.groundline.formulary.Input;
import org.groundline.measure.Rounding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/// Situations for each kind of drawing, over the whole range of its inputs, drawn from a seed.
final class Samples {
    private static final Set<String> WHOLE = Set.of("°", "hPa");
    private static final int SITUATIONS = 60;
    private static final Map<String, List<Drawn>> DRAWN = new ConcurrentHashMap<>();

    private final Random random;

    Samples(long seed) {
        this.random = new Random(seed);
    }

    /// A drawing with the situation behind it.
    record Drawn(Situation situation, Purpose purpose, Drawing drawing) {
        DrawnSvg svg() {
            return DrawnSvg.of(drawing);
        }
    }

    /// Drawings of one kind, half of them for a stem; the theory refuses some of the situations.
    static List<Drawn> drawings(String kind) {
        return DRAWN.computeIfAbsent(
                kind, k -> new Samples(5).draw(Diagrams.find(k).orElseThrow()));
    }

    private List<Drawn> draw(Diagram diagram) {
        var drawn = new ArrayList<Drawn>();
        for (int i = 0; i < SITUATIONS; i++) {
            var values = valuesFor(diagram);
            for (Purpose purpose : Purpose.values()) {
                var situation = tell(diagram, values);
                draw(diagram, situation, purpose)
                        .ifPresent(d -> drawn.add(new Drawn(situation, purpose, d)));
            }
        }
        if (drawn.size() < SITUATIONS) {
            throw new AssertionError("most samples of %s are refused".formatted(diagram.name()));
        }
        return drawn;
    }

    /// One value is asked; of the others all or some are told.
    private Situation tell(Diagram diagram, Map<String, Double> values) {
        var askable = diagram.askable(values.keySet());
        boolean all = random.nextBoolean();
        var labelled = askable.stream().filter(name -> all || random.nextBoolean());
        var asked = askable.get(random.nextInt(askable.size()));
        return Situation.of(values, labelled.collect(toSet()), Set.of(asked));
    }

    static Optional<Drawing> draw(Diagram diagram, Situation situation, Purpose purpose) {
        try {
            return Optional.of(diagram.draw(situation, purpose, "item7", "en"));
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    /// Values for all inputs and some of the optional ones. Their combination may still be refused.
    Map<String, Double> valuesFor(Diagram diagram) {
        var values = new HashMap<String, Double>();
        var optional = diagram.optionalInputs().stream().filter(i -> random.nextInt(3) > 0);
        Stream.concat(diagram.inputs().stream(), optional)
                .forEach(input -> values.put(input.name(), input.unit().toSi(value(input))));
        switch (diagram.name()) {
            case "glide-path" -> fitDistances(values);
            case "polar-tangent" -> fitPolar(values);
            case "cloud-base" -> fitSpread(values);
            default -> {}
        }
        return values;
    }

    /// An end of the range in one case of four, else anything between, with three digits.
    private double value(Input input) {
        return switch (random.nextInt(8)) {
            case 0 -> input.low();
            case 1 -> input.high();
            default -> {
                double any = random.nextDouble(input.low(), input.high());
                double rounded =
                        WHOLE.contains(input.unit().symbol())
                                ? Math.rint(any)
                                : Rounding.significant(any, 3).doubleValue();
                yield Math.clamp(rounded, input.low(), input.high());
            }
        };
    }

    private void fitDistances(Map<String, Double> values) {
        double lost = values.getOrDefault("height", 0.0) - values.getOrDefault("reserve", 0.0);
        double distance = lost * Math.exp(random.nextDouble(Math.log(0.3), Math.log(60)));
        values.put("distance", distance);
        values.computeIfPresent(
                "still-air-distance",
                (name, any) -> distance * Math.exp(random.nextDouble(-1.5, 1.5)));
    }

    /// A polar of a paraglider or a hang glider by its speeds, which make a, b and c.
    private void fitPolar(Map<String, Double> values) {
        double slowest = random.nextDouble(7, 14);
        double sinkRate = random.nextDouble(0.7, 1.4);
        double bestGlide = slowest * random.nextDouble(1.06, 1.4);
        double a = sinkRate / (bestGlide * bestGlide - slowest * slowest);
        values.put("a", a);
        values.put("b", -2 * a * slowest);
        values.put("c", sinkRate + a * slowest * slowest);
        values.put("maximum-speed", Math.min(36, bestGlide * random.nextDouble(1.2, 2)));
    }

    private void fitSpread(Map<String, Double> values) {
        double spread = random.nextDouble(0.5, 25);
        double dewPoint = values.getOrDefault("temperature", 0.0) - spread;
        values.put("dew-point", Math.max(dewPoint, 243.15));
        values.computeIfPresent(
                "cloud-base",
                (name, any) ->
                        (values.getOrDefault("temperature", 0.0)
                                        - values.getOrDefault("dew-point", 0.0))
                                * random.nextDouble(115, 130));
    }
}
