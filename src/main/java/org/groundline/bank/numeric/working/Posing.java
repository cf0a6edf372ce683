package org.groundline.bank.numeric.working;

import org.groundline.bank.numeric.goal.Decision;
import org.groundline.bank.numeric.goal.Interval;
import org.groundline.bank.numeric.goal.Key;
import org.groundline.bank.numeric.posed.PosedChoice;
import org.groundline.bank.numeric.posed.PosedNumber;
import org.groundline.bank.numeric.posed.PosedOption;
import org.groundline.bank.numeric.posed.PosedTemplate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/// Puts a computed case of a template into words and intervals.
public record Posing(Parts parts) {
    /// @param choice the combination for which the case was computed
    public PosedTemplate pose(int[] choice, Instance instance) {
        Map<String, String> drawn = parts.printed(choice, instance);
        return switch (parts.goal()) {
            case Key key -> number(drawn, instance, key);
            case Decision decision -> decision(drawn, instance, decision);
        };
    }

    private PosedNumber number(Map<String, String> drawn, Instance instance, Key key) {
        Interval accepted = key.accepted(instance.answer());
        Map<String, String> texts = parts.texts(drawn, instance);
        return new PosedNumber(
                drawn,
                parts.stem().with(drawn),
                key.unit().symbol(),
                key.signed(),
                key.printed(instance.answer()),
                accepted.lowest(),
                accepted.highest(),
                MistakeRanges.of(instance, parts.working().mistakes(), key, accepted),
                parts.solution(instance),
                parts.explain().with(texts),
                parts.posedPicture(instance, texts));
    }

    private PosedChoice decision(Map<String, String> drawn, Instance instance, Decision decision) {
        int right = decision.right(instance.answer());
        List<PosedOption> options = new ArrayList<>();
        for (Decision.Choice option : decision.options()) {
            options.add(option.posed(options.size() == right, drawn));
        }
        Map<String, String> texts = parts.texts(drawn, instance);
        return new PosedChoice(
                drawn,
                parts.stem().with(drawn),
                options,
                parts.solution(instance),
                parts.explain().with(texts),
                parts.posedPicture(instance, texts));
    }
}
