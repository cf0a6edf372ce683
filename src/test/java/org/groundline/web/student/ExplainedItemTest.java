package org.groundline.web.student;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.Figure;
import org.groundline.bank.IllustratedFigure;
import org.groundline.bank.Key;
import org.groundline.bank.Shown;
import org.groundline.sitting.Item;
import org.groundline.sitting.Mark;
import org.groundline.sitting.Verdict;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// Which drawings stand in an explanation.
class ExplainedItemTest {
    private static final Figure RIDGE =
            new IllustratedFigure(340, 200, "<path></path>", "A ridge", "Seen from the side.");

    @Test
    void whatStoodBesideTheStemStandsThereInTheExplanation() {
        ExplainedItem explained = explained(List.of());

        assertThat(explained.stemFigures())
                .startsWith("<figure class=\"diagram\"><svg ")
                .contains("Seen from the side.");
        assertThat(explained.figures()).isEmpty();
    }

    @Test
    void aDrawingThatExplainsTheAnswerTakesItsPlace() {
        ExplainedItem explained = explained(List.of(RIDGE));

        assertThat(explained.stemFigures()).isEmpty();
        assertThat(explained.figures()).contains("Seen from the side.");
    }

    private static ExplainedItem explained(List<Figure> explaining) {
        var item =
                new Item(
                        new UUID(1, 1),
                        3,
                        "which-mark",
                        "0".repeat(64),
                        "en",
                        "AER-1",
                        "AER-1.1",
                        false,
                        new Shown.Choice(
                                "Which mark?",
                                List.of("Mark 1", "Mark 2", "Mark 3"),
                                List.of(RIDGE)));
        var key = new Key.Choice("B", Map.of(), "Because.", List.of(), List.of(), explaining);
        var mark = new Mark(Verdict.UNANSWERED, 0, 100, Optional.empty());
        return ExplainedItem.of(ItemWords.in("en"), item, key, mark, Optional.empty());
    }
}
