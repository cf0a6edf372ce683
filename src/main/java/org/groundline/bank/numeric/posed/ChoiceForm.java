package org.groundline.bank.numeric.posed;

import org.groundline.bank.numeric.posed.PosedNumber.MistakeRange;
import org.groundline.measure.Units;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// A number to be chosen instead of typed: the key and what the template's own mistakes lead to.
public final class ChoiceForm {
    private static final int FEWEST_WRONG = 2;
    private static final int MOST_WRONG = 3;

    private ChoiceForm() {}

    private record Numbered(BigDecimal value, PosedOption option) {}

    /// The options ascend, so that their order tells nothing; empty where fewer than two mistakes
    /// are apart for the values drawn.
    public static Optional<PosedChoice> of(PosedNumber posed) {
        var options = new ArrayList<Numbered>();
        options.add(
                new Numbered(posed.answer(), new PosedOption.Right(print(posed, posed.answer()))));
        Set<String> printed = new HashSet<>(List.of(print(posed, posed.answer())));
        for (MistakeRange mistake : posed.mistakes()) {
            String text = print(posed, mistake.shown());
            if (mistake.cause() instanceof Cause.Idea idea
                    && options.size() <= MOST_WRONG
                    && printed.add(text)) {
                options.add(new Numbered(mistake.shown(), new PosedOption.Wrong(text, idea)));
            }
        }
        return options.size() > FEWEST_WRONG
                ? Optional.of(choice(posed, options))
                : Optional.empty();
    }

    private static PosedChoice choice(PosedNumber posed, List<Numbered> options) {
        return new PosedChoice(
                posed.drawn(),
                posed.stem(),
                options.stream()
                        .sorted(Comparator.comparing(Numbered::value))
                        .map(Numbered::option)
                        .toList(),
                posed.steps(),
                posed.explanation(),
                posed.picture());
    }

    private static String print(PosedNumber posed, BigDecimal value) {
        return Units.get(posed.unit()).print(value);
    }
}
