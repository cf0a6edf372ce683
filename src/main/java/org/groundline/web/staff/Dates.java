package org.groundline.web.staff;

import org.groundline.school.School;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;

/// Days and times as a school's readers write them, in its zone.
public record Dates(School school) {
    private Locale language() {
        return Locale.forLanguageTag(school.language());
    }

    /// A day, such as 12 May 2027.
    public String day(Instant instant) {
        return day(school.dayOf(instant));
    }

    /// A day, such as 12 May 2027.
    public String day(LocalDate day) {
        return DateTimeFormatter.ofPattern("d MMMM yyyy", language()).format(day);
    }

    /// A day and a time of day, such as 12 May 2027, 14:30.
    public String dayAndTime(Instant instant) {
        return day(instant)
                + ", "
                + DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT)
                        .withLocale(Locale.UK)
                        .format(instant.atZone(school.zone()));
    }

    /// A day as machines read it.
    public String iso(Instant instant) {
        return school.dayOf(instant).toString();
    }
}
