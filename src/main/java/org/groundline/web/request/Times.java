package org.groundline.web.request;

import org.groundline.school.School;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;

/// Days and times as the people of a school read them, in its zone.
public record Times(ZoneId zone, Locale language) {
    private static final String UNBROKEN_DASH = "\u2060–\u2060";

    public static Times of(School school) {
        return new Times(school.zone(), Locale.forLanguageTag(school.language()));
    }

    /// Such as "12 May 2027".
    public String day(Instant instant) {
        return day(local(instant));
    }

    /// Such as "12 May 2027".
    public String day(LocalDate day) {
        return formatted("d MMMM uuuu", day);
    }

    /// A day as short as it can be said: "12 May" in the year of now, else "12 May 2026".
    public String shortDay(Instant instant, Instant now) {
        LocalDate day = local(instant);
        return formatted(day.getYear() == local(now).getYear() ? "d MMM" : "d MMM uuuu", day);
    }

    /// Such as "14:32".
    public String time(Instant instant) {
        return formatted("HH:mm", instant.atZone(zone));
    }

    /// Such as "12 May 2027, 14:32".
    public String dayAndTime(Instant instant) {
        return day(instant) + ", " + time(instant);
    }

    /// From one instant to another, such as "12 May 2027, 14:30–17:30"; with both days where they
    /// differ.
    public String span(Instant from, Instant until) {
        return local(from).equals(local(until))
                ? dayAndTime(from) + UNBROKEN_DASH + time(until)
                : dayAndTime(from) + " – " + dayAndTime(until);
    }

    /// A day as machines read it.
    public String iso(Instant instant) {
        return local(instant).toString();
    }

    private LocalDate local(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }

    private String formatted(String pattern, TemporalAccessor when) {
        return DateTimeFormatter.ofPattern(pattern, language).format(when);
    }
}
