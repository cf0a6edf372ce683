package org.groundline.web.student;

import org.groundline.school.School;
import org.groundline.sitting.AnswerReading;
import org.groundline.sitting.Item;
import org.groundline.sitting.KeptAnswer;

import java.util.Locale;

/// What an answer that was kept looks like on a page.
final class Answered {
    private Answered() {}

    static ExplainedItem.Given given(School school, Item item, KeptAnswer answer) {
        return new ExplainedItem.Given(reading(school, item, answer), answer.reading());
    }

    /// What the program read in it, such as "5.3 km = 5300 m".
    static String reading(School school, Item item, KeptAnswer answer) {
        Locale language = Locale.forLanguageTag(school.language());
        return AnswerReading.of(item.shown(), answer.raw(), language).echo();
    }
}
