package org.groundline.bank;

import org.groundline.bank.file.Finding;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
import org.groundline.bank.numeric.posed.Cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/// The two misconceptions with which every typed answer is compared, whatever its template says.
/// Their feedback is completed with what was typed.
final class SlipIdeas {
    private static final String GIVEN = "{given}";
    private static final String ASKED = "{asked}";
    private static final String FACTOR = "{factor}";

    /// The places in the feedback of each.
    private static final Map<String, List<String>> PLACES =
            Map.of(Belief.UNIT_SLIP, List.of(GIVEN, ASKED), Belief.TEN_SLIP, List.of(FACTOR));

    private SlipIdeas() {}

    /// "this is the answer in m/s, not in km/h"
    static Belief belief(Misconception idea, Cause.OtherUnit unit) {
        return belief(idea, Map.of(GIVEN, unit.given(), ASKED, unit.asked()));
    }

    /// "this is ten times the answer"
    static Belief belief(Misconception idea, Cause.PowerOfTen ten) {
        return belief(idea, Map.of(FACTOR, factor(ten.exponent())));
    }

    private static String factor(int exponent) {
        return switch (exponent) {
            case 1 -> "ten times";
            case 2 -> "a hundred times";
            case 3 -> "a thousand times";
            case -1 -> "a tenth of";
            case -2 -> "a hundredth of";
            case -3 -> "a thousandth of";
            default -> throw new IllegalArgumentException("no words for ten to " + exponent);
        };
    }

    private static Belief belief(Misconception idea, Map<String, String> values) {
        String feedback = idea.feedback();
        for (Map.Entry<String, String> value : values.entrySet()) {
            feedback = feedback.replace(value.getKey(), value.getValue());
        }
        return new Belief(idea.id(), feedback, idea.right());
    }

    /// A typed answer was read: the list must have both.
    static void use(Register<Misconception> list) {
        Belief.SLIPS.forEach(list::use);
    }

    /// What the list lacks of that which its templates use.
    static List<Finding> missing(Register<Misconception> list) {
        Notes notes = new Notes(MisconceptionsFile.NAME);
        for (String id : list.missing(Belief.SLIPS)) {
            String problem =
                    "there is no '%s', which typed answers are compared with".formatted(id);
            String remedy = "add it, with %s in its feedback".formatted(places(id));
            notes.add(Rule.SLIP, 1, problem, remedy);
        }
        return notes.findings();
    }

    /// Notes where the feedback of one of the two lacks a place.
    static void checkFeedback(Section section, Misconception idea) {
        List<String> lacking = new ArrayList<>(PLACES.getOrDefault(idea.id(), List.of()));
        lacking.removeIf(idea.feedback()::contains);
        if (!lacking.isEmpty()) {
            section.note(
                    Rule.SLIP,
                    "feedback",
                    "has no %s in its feedback".formatted(String.join(" and no ", lacking)),
                    "write %s where the program shall put what was typed"
                            .formatted(places(idea.id())));
        }
    }

    private static String places(String id) {
        return String.join(" and ", PLACES.getOrDefault(id, List.of()));
    }
}
