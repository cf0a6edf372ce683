package org.groundline.web.student;

import org.groundline.measure.TypedNumber.Way;
import org.groundline.school.School;
import org.groundline.sitting.AnswerReading;
import org.groundline.sitting.Item;
import org.groundline.sitting.KeptAnswer;

import java.util.List;
import java.util.Locale;

/// What an answer that was kept looks like on a page.
final class Answered {
    private Answered() {}

    static ExplainedItem.Given given(School school, Item item, KeptAnswer answer) {
        return new ExplainedItem.Given(
                reading(school, item, answer),
                answer.reading(),
                AnswerReading.findUnit(item.shown(), answer.raw(), language(school)));
    }

    /// What the program read in it, such as "5.3 km = 5300 m".
    static String reading(School school, Item item, KeptAnswer answer) {
        return AnswerReading.of(item.shown(), answer.raw(), language(school)).echo();
    }

    /// The two numbers that an answer could be; empty where it is clear.
    static List<Way> findWays(School school, Item item, String raw) {
        return AnswerReading.findWays(item.shown(), raw, language(school));
    }

    private static Locale language(School school) {
        return Locale.forLanguageTag(school.language());
    }
}
