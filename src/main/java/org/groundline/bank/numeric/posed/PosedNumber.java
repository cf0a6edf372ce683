package org.groundline.bank.numeric.posed;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// A numeric question as posed: drawn values, texts and the frozen intervals by which an answer is
/// marked. All decimals are in the answer's unit; marking only compares them.
///
/// @param drawn the drawn values as printed, by name
/// @param unit the symbol of the answer's unit, empty for a plain number
/// @param signed whether a typed minus counts
/// @param answer the key as printed
/// @param lowest the lowest accepted answer
/// @param highest the highest accepted answer
/// @param mistakes wrong results with a known cause, none inside the accepted interval; where two
///   of them overlap, the earlier one is meant
/// @param steps the worked solution with the drawn values
public record PosedNumber(
        Map<String, String> drawn,
        String stem,
        String unit,
        boolean signed,
        BigDecimal answer,
        BigDecimal lowest,
        BigDecimal highest,
        List<MistakeRange> mistakes,
        List<String> steps,
        String explanation,
        Optional<PosedPicture> picture)
        implements PosedTemplate {
    public PosedNumber {
        drawn = Collections.unmodifiableMap(new LinkedHashMap<>(drawn));
        mistakes = List.copyOf(mistakes);
        steps = List.copyOf(steps);
    }

    /// The answers that point to one cause, and its result as a wrong option shows it.
    ///
    /// @param step the position of the step that goes wrong, from 1; 0 where none is known
    public record MistakeRange(
            Cause cause, int step, BigDecimal shown, BigDecimal lowest, BigDecimal highest) {}
}
