package org.groundline.bank.numeric.goal;

import org.groundline.bank.numeric.posed.Cause;
import org.groundline.bank.numeric.source.Decimals;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.source.Symbols;
import org.groundline.bank.numeric.source.TemplateSource.DecideSource;
import org.groundline.bank.numeric.source.TemplateSource.OptionSource;
import org.groundline.bank.numeric.source.Wording;
import org.groundline.measure.Unit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// Reads how a template's value decides between its options.
public final class DecisionReader {
    private static final int FEWEST = 3;
    private static final int MOST = 4;

    private final Faults faults;

    /// @param faults takes what is wrong with the decision
    public DecisionReader(Faults faults) {
        this.faults = faults;
    }

    /// @param drawn the names that an option may show: a step would give the answer away
    public Optional<Decision> read(DecideSource source, Set<String> drawn) {
        Optional<Unit> unit = Symbols.unit("decide.unit", source.unit(), faults);
        Optional<Tolerance> tolerance = tolerance(source.tolerance());
        Optional<Range> range = Range.read("decide.between", source.between(), faults);
        List<BigDecimal> bounds = bounds(source);
        List<Decision.Choice> options = options(source.options(), drawn);
        if (unit.isEmpty() || tolerance.isEmpty() || range.isEmpty() || bounds.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Decision(unit.get(), tolerance.get(), range.get(), bounds, options));
    }

    private Optional<Tolerance> tolerance(Optional<String> text) {
        Optional<Tolerance> tolerance =
                text.flatMap(Decimals::find)
                        .filter(amount -> amount.signum() > 0)
                        .map(amount -> new Tolerance(0, amount.doubleValue(), 0));
        if (tolerance.isEmpty()) {
            faults.add(
                    "decide.tolerance",
                    text.map("“%s” is no tolerance"::formatted).orElse("it is missing"),
                    "write an amount above zero in the unit, without it; cases within two of them"
                            + " of a bound are not posed");
        }
        return tolerance;
    }

    private List<BigDecimal> bounds(DecideSource source) {
        var bounds = source.bounds().stream().flatMap(b -> Decimals.find(b).stream()).toList();
        if (bounds.size() < source.bounds().size() || !isAscending(bounds)) {
            faults.add(
                    "decide.bounds",
                    source.bounds() + " are no ascending numbers",
                    "write numbers in the unit, without it, the lowest first");
            return List.of();
        }
        int options = source.options().size();
        if (options < FEWEST || options > MOST || bounds.size() != options - 1) {
            faults.add(
                    "decide.bounds",
                    "there are %d bounds and %d options".formatted(bounds.size(), options),
                    "give 3 or 4 options and one bound fewer, as each bound parts two options");
            return List.of();
        }
        return bounds;
    }

    private static boolean isAscending(List<BigDecimal> bounds) {
        for (int i = 1; i < bounds.size(); i++) {
            if (bounds.get(i - 1).compareTo(bounds.get(i)) >= 0) {
                return false;
            }
        }
        return true;
    }

    private List<Decision.Choice> options(List<OptionSource> sources, Set<String> drawn) {
        var options = new ArrayList<Decision.Choice>();
        for (OptionSource source : sources) {
            String at = "options[%d].text".formatted(options.size());
            options.add(
                    new Decision.Choice(
                            Wording.of(source.text(), drawn, at, faults),
                            new Cause.Idea(source.misconception())));
        }
        return List.copyOf(options);
    }
}
