package org.groundline.bank.numeric.check;

import org.groundline.bank.numeric.draw.Draw;
import org.groundline.bank.numeric.formula.Condition;
import org.groundline.bank.numeric.formula.Expression;
import org.groundline.bank.numeric.goal.Decision;
import org.groundline.bank.numeric.goal.Key;
import org.groundline.bank.numeric.picture.Picture;
import org.groundline.bank.numeric.source.Faults;
import org.groundline.bank.numeric.working.Mistake;
import org.groundline.bank.numeric.working.Parts;
import org.groundline.bank.numeric.working.Step;
import org.groundline.bank.numeric.working.Working;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// Whether the stem tells every drawn value that a student needs: all but those that only feed
/// other draws, such as the share of what can be reached at which a field lies.
public record ToldCheck(Parts parts, Faults faults) {
    /// Notes each drawn value that is needed and not told.
    public void check() {
        Set<String> shown = shown().collect(Collectors.toSet());
        Set<String> feeding = feeding().collect(Collectors.toSet());
        for (Draw draw : parts.space().draws()) {
            boolean onlyFeeds = feeding.contains(draw.name()) && !shown.contains(draw.name());
            if (!parts.tells(draw) && !onlyFeeds) {
                faults.add(
                        "stem",
                        "it does not tell {%s}".formatted(draw.name()),
                        feeding.contains(draw.name())
                                ? "add it, or let nothing but other draws use it"
                                : "add it, or do not draw");
            }
        }
    }

    private Stream<String> feeding() {
        return parts.space().dependents().stream().flatMap(draw -> draw.formula().names());
    }

    /// The names in everything that a student is shown or asked for.
    private Stream<String> shown() {
        Working working = parts.working();
        Stream<String> formulas =
                Stream.concat(
                                working.steps().stream().map(Step::formula),
                                working.mistakes().stream().map(Mistake::formula))
                        .flatMap(Expression::names);
        return Stream.of(
                        working.where().stream().flatMap(Condition::names),
                        formulas,
                        working.answer().names(),
                        parts.explain().names().stream(),
                        options().stream().flatMap(option -> option.text().names().stream()),
                        drawing())
                .flatMap(names -> names);
    }

    private Stream<String> drawing() {
        return parts.picture().stream().flatMap(Picture::names);
    }

    private List<Decision.Choice> options() {
        return switch (parts.goal()) {
            case Key key -> List.of();
            case Decision decision -> decision.options();
        };
    }
}
