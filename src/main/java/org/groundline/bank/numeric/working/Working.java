package org.groundline.bank.numeric.working;

import org.groundline.bank.numeric.formula.Condition;
import org.groundline.bank.numeric.formula.Expression;
import org.groundline.bank.numeric.formula.Formula;
import org.groundline.bank.numeric.formula.NoAnswer;
import org.groundline.bank.numeric.goal.Goal;
import org.groundline.measure.Unit;

import java.util.List;
import java.util.Optional;

/// The formulas of a template, read and right in their dimensions.
///
/// @param drawn how many values are drawn; those of the steps follow them
/// @param goal what the answer is for; it and the mistakes are in its unit
public record Working(
        int drawn,
        Optional<Condition> where,
        List<Step> steps,
        Expression answer,
        List<Mistake> mistakes,
        Goal goal) {
    /// Whether the condition allows these drawn values.
    ///
    /// @throws NoAnswer if theory refuses them
    public boolean allows(double[] values) {
        try {
            return where.isEmpty() || where.get().holds(values);
        } catch (IllegalArgumentException refused) {
            throw new NoAnswer("where", String.valueOf(refused.getMessage()));
        }
    }

    /// Computes everything for drawn values (SI).
    ///
    /// @throws NoAnswer if a formula has no finite value for them
    public Instance solve(double[] drawnValues) {
        double[] values = new double[drawn + steps.size()];
        System.arraycopy(drawnValues, 0, values, 0, drawn);
        for (int i = 0; i < steps.size(); i++) {
            values[drawn + i] =
                    Formula.compute("steps[%s].formula", i, steps.get(i).formula(), values);
        }
        Unit unit = goal.unit();
        double key = unit.fromSi(Formula.compute(goal.at() + ".formula", 0, answer, values));
        double[] wrong = new double[mistakes.size()];
        for (int i = 0; i < wrong.length; i++) {
            var formula = mistakes.get(i).formula();
            wrong[i] = unit.fromSi(Formula.compute("mistakes[%s].formula", i, formula, values));
        }
        return new Instance(values, key, wrong);
    }
}
