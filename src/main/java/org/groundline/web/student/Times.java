package org.groundline.web.student;

import org.groundline.school.School;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/// Days and times as the people of a school read them.
record Times(ZoneId zone, Locale language) {
    static Times of(School school) {
        return new Times(school.zone(), Locale.forLanguageTag(school.language()));
    }

    /// Such as "12 May 2027".
    String day(Instant instant) {
        return formatted("d MMMM uuuu", instant);
    }

    /// Such as "14:32".
    String time(Instant instant) {
        return formatted("HH:mm", instant);
    }

    /// Such as "12 May 2027, 14:32".
    String dayAndTime(Instant instant) {
        return day(instant) + ", " + time(instant);
    }

    private String formatted(String pattern, Instant instant) {
        return DateTimeFormatter.ofPattern(pattern, language).format(instant.atZone(zone));
    }
}
