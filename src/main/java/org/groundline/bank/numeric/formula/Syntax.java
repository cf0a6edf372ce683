package org.groundline.bank.numeric.formula;

import static com.ezylang.evalex.operators.OperatorIfc.OPERATOR_PRECEDENCE_POWER_HIGHER;

import com.ezylang.evalex.config.ExpressionConfiguration;
import com.ezylang.evalex.parser.ASTNode;
import com.ezylang.evalex.parser.ParseException;

import org.groundline.measure.Unit;
import org.groundline.measure.Units;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.regex.Pattern;

/// The syntax tree of a formula's text, by EvalEx, of which only the bare grammar is used.
///
/// A quantity such as `20 [km/h]` is put under a name that no author can write (a capital letter
/// and a number) before parsing, so that it binds as closely as a number.
///
/// @param quantities the quantities by those names
record Syntax(ASTNode root, Map<String, Expression> quantities) {
    private static final Pattern QUANTITY =
            Pattern.compile("(?<![a-z0-9_.])(\\d+(?:\\.\\d+)?) *\\[([^\\[\\]]{1,20})]");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Pattern STRANGE = Pattern.compile("[^a-z0-9_ .+\\-*/^(),<>=&|Q]");

    /// What the parser would let pass: two operands side by side, an operator or a comma without
    /// its operand on the right, and one without its operand on the left.
    private static final Pattern GAP =
            Pattern.compile(
                    "[a-z0-9_.)] +[a-zQ0-9_.(]"
                            + "|[-+*/^<>=&|,] *([,)]|$)|\\( *(,|$)"
                            + "|(^|[-+*/^<>=&|,(]) *[*/^,]|(^|[-+*/^,(]) *[<>=&|]");

    private static final ExpressionConfiguration GRAMMAR =
            ExpressionConfiguration.builder()
                    .arraysAllowed(false)
                    .structuresAllowed(false)
                    .binaryAllowed(false)
                    .implicitMultiplicationAllowed(false)
                    .singleQuoteStringLiteralsAllowed(false)
                    .defaultConstants(Map.of())
                    .functionDictionary(new AnyFunction())
                    .powerOfPrecedence(OPERATOR_PRECEDENCE_POWER_HIGHER)
                    .build();

    static Syntax of(String text) {
        if (text.length() > Formula.LONGEST) {
            throw new FormulaFault(
                    "the formula has %d characters".formatted(text.length()),
                    "use at most %d; name parts of it as steps".formatted(Formula.LONGEST));
        }
        if (text.contains("Q")) {
            throw strange("Q");
        }
        var quantities = new LinkedHashMap<String, Expression>();
        String line = SPACES.matcher(text).replaceAll(" ").strip();
        String named =
                QUANTITY.matcher(line).replaceAll(m -> name(m.group(1), m.group(2), quantities));
        return new Syntax(parsed(named), quantities);
    }

    private static String name(String number, String symbol, Map<String, Expression> quantities) {
        Unit unit =
                Units.find(symbol)
                        .orElseThrow(
                                () ->
                                        new FormulaFault(
                                                "[%s] is no unit known here".formatted(symbol),
                                                "use a unit such as [km/h], [m] or [°]"));
        String name = "Q" + quantities.size();
        double si = unit.toSi(Double.parseDouble(number));
        String text = "%s [%s]".formatted(number, unit.symbol());
        quantities.put(name, new Expression.Number(si, unit.dimension(), text));
        return name;
    }

    private static ASTNode parsed(String text) {
        var strange = STRANGE.matcher(text);
        if (strange.find()) {
            throw strange(strange.group());
        }
        var gap = GAP.matcher(text);
        if (gap.find()) {
            throw unreadable("something is missing at `%s`".formatted(gap.group().strip()));
        }
        try {
            return new com.ezylang.evalex.Expression(text, GRAMMAR).getAbstractSyntaxTree();
        } catch (ParseException e) {
            throw unreadable("it cannot be read: " + e.getMessage());
        } catch (NoSuchElementException e) {
            // EvalEx 3.6.2 runs out of operands on some malformed texts instead of saying so.
            throw unreadable("it cannot be read: an operand is missing");
        }
    }

    private static FormulaFault strange(String found) {
        return switch (found) {
            case "[", "]" ->
                    new FormulaFault(
                            "a unit in brackets does not follow a number", "write 20 [km/h]");
            default ->
                    new FormulaFault(
                            "`%s` has no meaning in a formula".formatted(found),
                            "use lower-case names, numbers, + - * / ^ and parentheses");
        };
    }

    private static FormulaFault unreadable(String problem) {
        return new FormulaFault(problem, "check operators, commas and parentheses");
    }
}
