package org.groundline.bank.numeric.formula;

import com.ezylang.evalex.parser.ASTNode;

import org.groundline.bank.numeric.formula.Condition.Sign;
import org.groundline.measure.Dimension;
import org.groundline.theory.StandardAtmosphere;

import java.util.ArrayList;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/// Walks the parser's tree into ours. Whatever is not listed here is refused.
record FormulaReader(Syntax syntax, Scope scope) {
    private static final Pattern NUMBER =
            Pattern.compile("(\\d+\\.?\\d*|\\.\\d+)(e[+-]?\\d{1,2})?");

    private static final Map<String, Expression> CONSTANTS =
            Map.of(
                    "g",
                    new Expression.Number(StandardAtmosphere.GRAVITY, Dimension.ACCELERATION, "g"),
                    "rho0",
                    new Expression.Number(
                            StandardAtmosphere.SEA_LEVEL_DENSITY, Dimension.DENSITY, "rho0"));

    static boolean isConstant(String name) {
        return CONSTANTS.containsKey(name);
    }

    Expression expression(ASTNode node, int depth) {
        requireDepth(depth);
        return switch (node.getToken().getType()) {
            case NUMBER_LITERAL -> number(node.getToken().getValue());
            case VARIABLE_OR_CONSTANT -> named(node.getToken().getValue());
            case PREFIX_OPERATOR -> signed(node, depth);
            case INFIX_OPERATOR -> operation(node, depth);
            case FUNCTION -> call(node, depth);
            default -> throw meaningless(node);
        };
    }

    Condition condition(ASTNode node, int depth) {
        requireDepth(depth);
        return switch (node.getToken().getValue()) {
            case "&&" -> new Condition.Both(part(node, 0, depth), part(node, 1, depth));
            case "||" -> new Condition.Either(part(node, 0, depth), part(node, 1, depth));
            case "<" -> comparison(node, Sign.BELOW, depth);
            case "<=" -> comparison(node, Sign.AT_MOST, depth);
            case ">" -> comparison(node, Sign.ABOVE, depth);
            case ">=" -> comparison(node, Sign.AT_LEAST, depth);
            default ->
                    throw new FormulaFault(
                            "a condition compares two quantities", "write it like wind < airspeed");
        };
    }

    private Condition part(ASTNode node, int at, int depth) {
        return condition(node.getParameters().get(at), depth + 1);
    }

    private Condition comparison(ASTNode node, Sign sign, int depth) {
        return new Condition.Comparison(operand(node, 0, depth), sign, operand(node, 1, depth));
    }

    private Expression operand(ASTNode node, int at, int depth) {
        return expression(node.getParameters().get(at), depth + 1);
    }

    private Expression signed(ASTNode node, int depth) {
        return switch (node.getToken().getValue()) {
            case "-" -> new Expression.Negation(operand(node, 0, depth));
            case "+" -> operand(node, 0, depth);
            default -> throw meaningless(node);
        };
    }

    private Expression operation(ASTNode node, int depth) {
        String operator = node.getToken().getValue();
        if (!"+-*/^".contains(operator)) {
            throw meaningless(node);
        }
        var left = operand(node, 0, depth);
        var right = operand(node, 1, depth);
        return switch (operator) {
            case "+" -> new Expression.Sum(left, right);
            case "-" -> new Expression.Difference(left, right);
            case "*" -> new Expression.Product(left, right);
            case "/" -> new Expression.Quotient(left, right);
            case "^" -> new Expression.Power(left, right);
            default -> throw meaningless(node);
        };
    }

    private Expression call(ASTNode node, int depth) {
        String name = node.getToken().getValue();
        var function =
                Functions.find(name)
                        .orElseThrow(
                                () ->
                                        new FormulaFault(
                                                "there is no function `%s`".formatted(name),
                                                "use one of "
                                                        + String.join(", ", Functions.names())));
        var arguments = new ArrayList<Expression>();
        for (int i = 0; i < node.getParameters().size(); i++) {
            arguments.add(operand(node, i, depth));
        }
        return new Expression.Call(function, arguments);
    }

    private static Expression number(String text) {
        if (!NUMBER.matcher(text).matches()) {
            throw new FormulaFault(
                    "`%s` is no number".formatted(text), "write numbers like 1.6 or 1e3");
        }
        return new Expression.Number(Double.parseDouble(text), Dimension.NUMBER, text);
    }

    private Expression named(String name) {
        return Optional.ofNullable(syntax.quantities().get(name))
                .or(() -> Optional.ofNullable(CONSTANTS.get(name)))
                .or(() -> scope.find(name))
                .orElseThrow(() -> unknown(name));
    }

    private FormulaFault unknown(String name) {
        return new FormulaFault(
                "there is no value called `%s`".formatted(name),
                "known are g, rho0"
                        + (scope.names().isEmpty() ? "" : ", ")
                        + String.join(", ", scope.names().keySet()));
    }

    private static void requireDepth(int depth) {
        if (depth > Formula.DEEPEST) {
            throw new FormulaFault(
                    "the formula is nested deeper than %d".formatted(Formula.DEEPEST),
                    "name parts of it as steps");
        }
    }

    private static FormulaFault meaningless(ASTNode node) {
        return new FormulaFault(
                "`%s` has no meaning here".formatted(node.getToken().getValue()),
                "use + - * / ^ and parentheses; comparisons stand in `where` only");
    }
}
