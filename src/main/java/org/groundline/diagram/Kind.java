package org.groundline.diagram;

import org.groundline.formulary.Input;
import org.groundline.measure.Rounding;
import org.groundline.measure.Unit;
import org.groundline.measure.Units;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/// How a motif is drawn, and from what.
///
/// @param height of the picture
/// @param inputs what it is drawn from
/// @param optional those inputs that may be left out
/// @param silent inputs without a label, which a stem shows all the same, such as the polar that is
///   to be read
record Kind(
        Motif motif,
        double height,
        List<Input> inputs,
        Set<Term> optional,
        List<Derived> derived,
        Set<Term> silent,
        Drawer drawer) {
    private static final int DIGITS_OF_INPUTS = 6;

    Kind {
        inputs = List.copyOf(inputs);
        optional = Set.copyOf(optional);
        derived = List.copyOf(derived);
        silent = Set.copyOf(silent);
    }

    static Input input(Term term, String unit, double low, double high) {
        return new Input(term.id(), Units.get(unit), low, high);
    }

    String printInput(Term term, double si) {
        var input =
                inputs.stream().filter(i -> i.name().equals(term.id())).findFirst().orElseThrow();
        return print(input.unit(), si, DIGITS_OF_INPUTS);
    }

    String printDerived(Term term, double si) {
        var value = derived.stream().filter(d -> d.term() == term).findFirst().orElseThrow();
        return print(value.unit(), si, value.digits());
    }

    /// The inputs with those of the values that follow from them; what is given need not follow.
    Values complete(Map<Term, Double> given, List<Derived> following) {
        var inputsOnly = new Values(given);
        var all = new EnumMap<Term, Double>(Term.class);
        all.putAll(given);
        for (Derived value : following) {
            if (value.existsFor(inputsOnly) && !given.containsKey(value.term())) {
                all.put(value.term(), value.formula().applyAsDouble(inputsOnly));
            }
        }
        return new Values(all);
    }

    private static String print(Unit unit, double si, int digits) {
        return unit.print(Rounding.significant(unit.fromSi(si), digits));
    }
}
