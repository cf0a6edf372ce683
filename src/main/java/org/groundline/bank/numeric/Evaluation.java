package org.groundline.bank.numeric;

import java.math.BigDecimal;
import java.util.List;

/// A template's answer for values that someone gave.
///
/// @param answer the unrounded answer, in `unit`
/// @param rounded the answer as an item would print it
/// @param unit the symbol of the answer's unit, empty for a plain number
/// @param steps the worked solution with these values
/// @param decision the option that is right for them; empty where the number itself is asked for
public record Evaluation(
        BigDecimal answer, BigDecimal rounded, String unit, List<String> steps, String decision) {
    public Evaluation {
        steps = List.copyOf(steps);
    }
}
