package org.groundline.sitting;

import org.groundline.bank.Belief;
import org.groundline.bank.Key;

import java.math.BigDecimal;
import java.util.Optional;

/// Marks an answer: a pure function of the item's frozen key, the answer's reading and this
/// version. The same archive marked again gives the same marks; another rule is another version.
public final class Marking {
    /// The version of this rule; every scoring run keeps the one it followed.
    static final int VERSION = 1;

    private static final int FULL = 100;

    private Marking() {}

    /// Returns the mark of an item. One mark for a right answer, none for a wrong or missing one;
    /// never negative.
    ///
    /// @param reading a letter, or a decimal in the item's unit; empty for an unanswered item
    public static Mark mark(Key key, Optional<String> reading) {
        return reading.map(given -> answered(key, given))
                .orElseGet(() -> new Mark(Verdict.UNANSWERED, 0, FULL, Optional.empty()));
    }

    private static Mark answered(Key key, String given) {
        return switch (key) {
            case Key.Choice choice ->
                    verdict(choice.letter().equals(given), choice.findBelief(given));
            case Key.Number number -> {
                var value = new BigDecimal(given);
                boolean within =
                        value.compareTo(number.lowest()) >= 0
                                && value.compareTo(number.highest()) <= 0;
                yield verdict(within, number.findBelief(value));
            }
        };
    }

    private static Mark verdict(boolean right, Optional<Belief> belief) {
        return right
                ? new Mark(Verdict.RIGHT, FULL, FULL, Optional.empty())
                : new Mark(Verdict.WRONG, 0, FULL, belief);
    }
}
