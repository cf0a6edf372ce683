package org.groundline.command;

import org.groundline.daylight.Daylight;
import org.groundline.daylight.Daylight.Event;
import org.groundline.daylight.Place;
import org.jspecify.annotations.NullMarked;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// The events of a day at a place, as they are printed.
///
/// @param times by the event, in the order of the day, with the offset of the place's clock
/// @param none why those that are missing do not happen
@NullMarked
record DayTimes(
        double latitudeDeg,
        double longitudeDeg,
        String zone,
        String date,
        Map<String, String> times,
        Map<String, String> none) {
    private static final Duration MINUTE = Duration.ofMinutes(1);

    DayTimes {
        times = Collections.unmodifiableMap(new LinkedHashMap<>(times));
        none = Collections.unmodifiableMap(new LinkedHashMap<>(none));
    }

    static DayTimes of(Place place, LocalDate date) {
        Map<String, String> times = new LinkedHashMap<>();
        Map<String, String> none = new LinkedHashMap<>();
        for (Event event : Event.values()) {
            Optional<Instant> found = Daylight.find(event, place, date);
            found.map(at -> minute(event, at).atZone(place.zone()).toOffsetDateTime())
                    .ifPresentOrElse(
                            at -> times.put(word(event), at.toString()),
                            () -> none.put(word(event), why(event, place, date)));
        }
        return new DayTimes(
                place.latitudeDeg(),
                place.longitudeDeg(),
                place.zone().getId(),
                date.toString(),
                times,
                none);
    }

    /// The minute on the dark side: the day is never told longer than it is.
    private static Instant minute(Event event, Instant at) {
        return switch (event) {
            case CIVIL_DAWN, SUNRISE ->
                    at.plus(MINUTE).minusNanos(1).truncatedTo(ChronoUnit.MINUTES);
            case SUNSET, CIVIL_DUSK -> at.truncatedTo(ChronoUnit.MINUTES);
        };
    }

    private static String word(Event event) {
        return switch (event) {
            case CIVIL_DAWN -> "civil dawn";
            case SUNRISE -> "sunrise";
            case SUNSET -> "sunset";
            case CIVIL_DUSK -> "civil dusk";
        };
    }

    private static String why(Event event, Place place, LocalDate date) {
        String line =
                switch (event) {
                    case SUNRISE, SUNSET -> "the horizon";
                    case CIVIL_DAWN, CIVIL_DUSK -> "6° below the horizon";
                };
        return switch (Daylight.absence(event, place, date)) {
            case SUN_STAYS_ABOVE -> "the sun stays above " + line;
            case SUN_STAYS_BELOW -> "the sun stays below " + line;
            case NOT_THIS_DAY -> "the sun does not cross " + line + " that way on this day";
        };
    }

    /// For people: one line for each event, in the order of the day.
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(date + ", " + zone);
        for (Event event : Event.values()) {
            String word = word(event);
            String time = times.getOrDefault(word, "");
            lines.add(word + ": " + (time.isEmpty() ? "none, " + none.get(word) : clock(time)));
        }
        return List.copyOf(lines);
    }

    /// The time by the place's clock, with the day where a dusk falls after midnight.
    private String clock(String time) {
        OffsetDateTime at = OffsetDateTime.parse(time);
        String clock = at.format(DateTimeFormatter.ofPattern("HH:mm"));
        String day = at.toLocalDate().toString();
        return day.equals(date) ? clock : clock + " on " + day;
    }
}
