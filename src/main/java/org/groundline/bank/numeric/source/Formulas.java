package org.groundline.bank.numeric.source;

import org.groundline.bank.numeric.formula.Expression;
import org.groundline.bank.numeric.formula.Formula;
import org.groundline.bank.numeric.formula.Scope;
import org.groundline.measure.Dimension;
import org.groundline.measure.Unit;

import java.util.Optional;

/// Reads formulas whose values are to be in a unit.
public record Formulas(Faults faults) {
    /// The formula, or nothing after noting what is wrong with it.
    public Optional<Expression> inUnit(String at, String text, Scope scope, Unit unit) {
        String remedy = "change the formula or the unit";
        return of(at, text, scope, unit.dimension(), unit.toString(), remedy);
    }

    /// The formula, or nothing after noting what is wrong with it.
    ///
    /// @param what has the dimension that its value must have, for the message
    /// @param remedy for a value of another dimension
    public Optional<Expression> of(
            String at, String text, Scope scope, Dimension dimension, String what, String remedy) {
        Optional<Expression> formula = faults.noting(at, () -> Formula.read(text, scope));
        if (formula.isPresent() && !formula.get().dimension().equals(dimension)) {
            faults.add(
                    at,
                    "`%s` is %s, but %s is %s"
                            .formatted(formula.get(), formula.get().dimension(), what, dimension),
                    remedy);
            return Optional.empty();
        }
        return formula;
    }
}
