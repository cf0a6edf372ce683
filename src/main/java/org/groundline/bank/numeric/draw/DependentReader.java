package org.groundline.bank.numeric.draw;

import org.groundline.bank.numeric.draw.Draw.Dependent;
import org.groundline.bank.numeric.formula.Scope;
import org.groundline.bank.numeric.source.Decimals;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.source.Formulas;
import org.groundline.bank.numeric.source.TemplateSource.DependentSource;
import org.groundline.measure.Dimension;
import org.groundline.measure.Rounding;
import org.groundline.measure.Rounding.Side;
import org.groundline.measure.Unit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Reads the drawn values that are computed from others.
///
/// @param names those of all drawn values, each in the place of its value
/// @param units of those whose unit is known
record DependentReader(List<String> names, Map<String, Unit> units, Faults faults) {
    /// The draw, or nothing after noting what is wrong with it. Where a unit is unknown, which is
    /// noted already, formulas with that name would look wrong, too: none is read.
    Optional<Dependent> read(String name, DependentSource source) {
        return unit(name)
                .filter(unit -> units.size() == names.size())
                .flatMap(unit -> read(name, unit, source));
    }

    private Optional<Dependent> read(String name, Unit unit, DependentSource source) {
        String at = "draw." + name;
        int slot = names.indexOf(name);
        Optional<Rounding> rounding = rounding(at + ".round", source.round());
        return new Formulas(faults)
                .inUnit(at + ".formula", source.formula(), scope(), unit)
                .flatMap(f -> rounding.map(r -> new Dependent(slot, name, unit, f, r)));
    }

    Optional<Unit> unit(String name) {
        return Optional.ofNullable(units.get(name));
    }

    private Scope scope() {
        Map<String, Dimension> dimensions = new LinkedHashMap<>();
        units.forEach((name, unit) -> dimensions.put(name, unit.dimension()));
        return new Scope(dimensions);
    }

    private Optional<Rounding> rounding(String at, String step) {
        Optional<Rounding> rounding =
                Decimals.find(step)
                        .filter(s -> s.signum() > 0)
                        .map(s -> new Rounding(s, Side.NEAREST));
        if (rounding.isEmpty()) {
            faults.add(
                    at,
                    "“%s” is no step".formatted(step),
                    "give the step of the printed value, such as 50 or 0.1");
        }
        return rounding;
    }
}
