package org.groundline.bank.numeric.formula;

import java.util.List;

/// Reads formulas and computes their values. What they may contain: numbers, numbers with a unit
/// such as `20 [km/h]`, the names in scope, the constants `g` and `rho0`, sums, differences,
/// products, quotients and powers, parentheses, and the functions of [#functions]. A condition
/// compares two formulas, and `&&` and `||` join conditions. `-2 ^ 2` is −4 and `2 ^ 3 ^ 2` is 512,
/// as in print.
public final class Formula {
    public static final int LONGEST = 500;
    public static final int DEEPEST = 64;

    private Formula() {}

    /// @throws FormulaFault if it is no formula, uses what it may not, or mixes dimensions
    public static Expression read(String text, Scope scope) {
        var syntax = Syntax.of(text);
        return new FormulaReader(syntax, scope).expression(syntax.root(), 1);
    }

    /// @throws FormulaFault if it is no condition, uses what it may not, or mixes dimensions
    public static Condition readCondition(String text, Scope scope) {
        var syntax = Syntax.of(text);
        return new FormulaReader(syntax, scope).condition(syntax.root(), 1);
    }

    /// Returns the value of a template's formula for the values in scope.
    ///
    /// @param at the formula's place in the template, with `%s` for the part that it belongs to
    /// @throws NoAnswer if it has none for them, or none that is finite
    public static double compute(String at, Object part, Expression formula, double[] values) {
        double value;
        try {
            value = formula.value(values);
        } catch (IllegalArgumentException refused) {
            throw new NoAnswer(at.formatted(part), String.valueOf(refused.getMessage()));
        }
        if (!Double.isFinite(value)) {
            throw new NoAnswer(at.formatted(part), "`%s` is not finite".formatted(formula));
        }
        return value;
    }

    /// Whether this name stands for a constant, so that nothing else may be called so.
    public static boolean isConstant(String name) {
        return FormulaReader.isConstant(name);
    }

    /// How each function is called, in alphabetical order.
    public static List<String> functions() {
        return Functions.names().stream()
                .flatMap(name -> Functions.find(name).stream())
                .map(Function::toString)
                .toList();
    }
}
