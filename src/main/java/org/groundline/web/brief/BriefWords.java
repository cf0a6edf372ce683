package org.groundline.web.brief;

import org.groundline.reading.Reading;
import org.groundline.web.request.Times;

/// The words about briefs, in one language.
public interface BriefWords {
    String briefs();

    String briefsOf(String module);

    String brief();

    String whatFor();

    String unread();

    String read(String day);

    String changed(String day);

    /// Whether somebody has read a brief, and when.
    default String state(Reading reading, Times times) {
        return switch (reading) {
            case Reading.Unread() -> unread();
            case Reading.Current(var at) -> read(times.day(at));
            case Reading.Changed(var at) -> changed(times.day(at));
        };
    }

    /// How many briefs were read of those there are.
    String readOf(int read, int all);

    String noBriefYet();

    String noBriefs();

    String iHaveRead();

    /// What acknowledging is for, before the button.
    String acknowledging();

    String practise();

    String backToCourse();

    String allOfModule();

    /// That the page prints one brief a sheet.
    String onSheets();

    String objectives();

    String servedObjectives();

    String sources();

    /// @param digits the first of its version
    String version(String digits);

    /// Returns the words in a language; English where there are none in it yet.
    static BriefWords in(String language) {
        return new EnglishBriefWords();
    }
}
