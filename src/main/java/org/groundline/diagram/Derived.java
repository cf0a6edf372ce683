package org.groundline.diagram;

import org.groundline.measure.Unit;
import org.groundline.measure.Units;

import java.util.Set;
import java.util.function.ToDoubleFunction;

/// A value that a drawing computes from its inputs.
///
/// @param digits significant digits in which it is written
/// @param needs the inputs without which it does not exist
/// @param formula gives it in SI
record Derived(
        Term term, Unit unit, int digits, Set<Term> needs, ToDoubleFunction<Values> formula) {
    Derived {
        needs = Set.copyOf(needs);
    }

    static Derived of(
            Term term, String unit, int digits, Set<Term> needs, ToDoubleFunction<Values> formula) {
        return new Derived(term, Units.get(unit), digits, needs, formula);
    }

    boolean existsFor(Values values) {
        return needs.stream().allMatch(values::has);
    }
}
