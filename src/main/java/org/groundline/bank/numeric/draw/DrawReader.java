package org.groundline.bank.numeric.draw;

import org.groundline.bank.numeric.draw.Draw.Chosen;
import org.groundline.bank.numeric.draw.Draw.Dependent;
import org.groundline.bank.numeric.source.Decimals;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.source.Symbols;
import org.groundline.bank.numeric.source.TemplateSource.ChosenSource;
import org.groundline.bank.numeric.source.TemplateSource.DependentSource;
import org.groundline.bank.numeric.source.TemplateSource.DrawSource;
import org.groundline.measure.Unit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/// Reads the drawn values of a template.
public final class DrawReader {
    static final int MOST_DRAWS = 40;
    static final int MOST_VALUES = 10_000;

    private final Faults faults;

    /// @param faults takes what is wrong with them
    public DrawReader(Faults faults) {
        this.faults = faults;
    }

    /// The drawn values, or nothing after noting what is wrong with one of them.
    public Optional<DrawSpace> read(Map<String, DrawSource> sources) {
        if (sources.isEmpty() || sources.size() > MOST_DRAWS) {
            faults.add(
                    "draw",
                    sources.isEmpty() ? "nothing is drawn" : sources.size() + " values are drawn",
                    "draw at least one value and at most " + MOST_DRAWS);
            return Optional.empty();
        }
        var dependents = new DependentReader(List.copyOf(sources.keySet()), units(sources), faults);
        var draws = new ArrayList<Draw>();
        sources.forEach((name, source) -> draw(name, source, dependents).ifPresent(draws::add));
        return draws.size() == sources.size() ? space(draws) : Optional.empty();
    }

    private Optional<DrawSpace> space(List<Draw> draws) {
        var dependents =
                draws.stream()
                        .filter(Dependent.class::isInstance)
                        .map(Dependent.class::cast)
                        .toList();
        return new DrawOrder(faults)
                .of(dependents)
                .map(ordered -> new DrawSpace(List.copyOf(draws), ordered));
    }

    private Map<String, Unit> units(Map<String, DrawSource> sources) {
        Map<String, Unit> units = new LinkedHashMap<>();
        sources.forEach(
                (name, source) -> {
                    String at = "draw." + name;
                    Symbols.checkName(at, name, faults);
                    Symbols.unit(at + ".unit", source.unit(), faults)
                            .ifPresent(u -> units.put(name, u));
                });
        return units;
    }

    private Optional<? extends Draw> draw(
            String name, DrawSource source, DependentReader dependents) {
        return switch (source) {
            case ChosenSource chosen -> {
                List<BigDecimal> values = values("draw." + name, chosen);
                yield dependents
                        .unit(name)
                        .filter(unit -> !values.isEmpty())
                        .map(unit -> Chosen.of(name, unit, values));
            }
            case DependentSource dependent -> dependents.read(name, dependent);
        };
    }

    private List<BigDecimal> values(String at, ChosenSource source) {
        return source.anyOf().isEmpty() ? range(at, source) : list(at, source);
    }

    private List<BigDecimal> list(String at, ChosenSource source) {
        if (Stream.of(source.from(), source.to(), source.step()).anyMatch(Optional::isPresent)) {
            faults.add(at, "it is a list and a range", "keep either any-of or from, to and step");
            return List.of();
        }
        var values = new ArrayList<BigDecimal>();
        for (int i = 0; i < source.anyOf().size(); i++) {
            String place = "%s.any-of[%d]".formatted(at, i);
            decimal(place, Optional.of(source.anyOf().get(i))).ifPresent(values::add);
        }
        if (values.stream().map(BigDecimal::stripTrailingZeros).distinct().count()
                < values.size()) {
            faults.add(at + ".any-of", "a value comes twice", "list each value once");
        }
        return values.size() == source.anyOf().size() ? values : List.of();
    }

    private List<BigDecimal> range(String at, ChosenSource source) {
        var from = decimal(at + ".from", source.from());
        var to = decimal(at + ".to", source.to());
        var step = decimal(at + ".step", source.step());
        if (from.isEmpty() || to.isEmpty() || step.isEmpty()) {
            return List.of();
        }
        return range(at, from.get(), to.get(), step.get());
    }

    private List<BigDecimal> range(String at, BigDecimal from, BigDecimal to, BigDecimal step) {
        if (step.signum() <= 0 || to.compareTo(from) < 0) {
            faults.add(
                    at, "it runs from %s to %s by %s".formatted(from, to, step), "count upwards");
            return List.of();
        }
        var steps = to.subtract(from).divideAndRemainder(step);
        if (steps[1].signum() != 0) {
            faults.add(
                    at + ".to",
                    "steps of %s from %s do not end at %s".formatted(step, from, to),
                    "end at " + to.subtract(steps[1]).toPlainString());
            return List.of();
        }
        if (steps[0].compareTo(BigDecimal.valueOf(MOST_VALUES)) >= 0) {
            faults.add(at, "it has over %d values".formatted(MOST_VALUES), "take a wider step");
            return List.of();
        }
        int decimals = Math.max(from.scale(), step.scale());
        return Stream.iterate(from.setScale(decimals), value -> value.add(step))
                .limit(steps[0].intValueExact() + 1L)
                .toList();
    }

    private Optional<BigDecimal> decimal(String at, Optional<String> text) {
        var decimal = text.flatMap(Decimals::find);
        if (decimal.isEmpty()) {
            faults.add(
                    at,
                    text.map("“%s” is no number"::formatted).orElse("it is missing"),
                    "write a number such as 5 or 0.5; the unit stands in unit");
        }
        return decimal;
    }
}
