package org.groundline.bank.numeric.working;

import org.groundline.bank.numeric.formula.Expression;
import org.groundline.measure.Rounding;
import org.groundline.measure.Unit;

/// One line of the worked solution.
public record Step(String name, String text, Expression formula, Unit unit) {
    private static final int DIGITS = 4;

    String printed(double si) {
        return unit.print(Rounding.significant(unit.fromSi(si), DIGITS));
    }

    /// "Ground speed is airspeed minus headwind: 23 km/h."
    String line(double si) {
        String sentence = text.strip();
        String open =
                sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
        return open + ": " + printed(si) + ".";
    }
}
