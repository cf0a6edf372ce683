package org.groundline.bank.numeric.source;

import static java.util.stream.Collectors.joining;

import org.groundline.bank.numeric.formula.Formula;
import org.groundline.measure.Unit;
import org.groundline.measure.Units;

import java.util.Optional;
import java.util.regex.Pattern;

/// Names and units as authors write them.
public final class Symbols {
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9_]{0,39}");

    private Symbols() {}

    /// Notes what is wrong with the name of a drawn value or a step.
    public static void checkName(String at, String name, Faults faults) {
        if (!NAME.matcher(name).matches()) {
            faults.add(
                    at,
                    "“%s” is no name".formatted(name),
                    "use lower-case letters, digits and _, at most 40, a letter first");
        } else if (Formula.isConstant(name) || name.equals(Wording.ANSWER)) {
            faults.add(at, "“%s” is taken".formatted(name), "choose another name");
        }
    }

    /// The unit with this symbol, or nothing after noting that it is unknown. Without a symbol it
    /// is the unit of plain numbers.
    public static Optional<Unit> unit(String at, Optional<String> symbol, Faults faults) {
        Optional<Unit> unit =
                symbol.isEmpty() ? Optional.of(Units.NUMBER) : Units.find(symbol.get());
        if (unit.isEmpty()) {
            faults.add(
                    at,
                    "“%s” is no unit known here".formatted(symbol.orElseThrow()),
                    "use one of %s, or leave it out for a plain number"
                            .formatted(
                                    Units.all().stream()
                                            .map(Unit::symbol)
                                            .filter(known -> !known.isEmpty())
                                            .collect(joining(" "))));
        }
        return unit;
    }
}
