package org.groundline.command;

import org.groundline.daylight.Place;
import org.groundline.error.Refusal;
import org.jspecify.annotations.NullMarked;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Reads the place and the day that a person typed.
@NullMarked
final class DaylightInput {
    private static final Pattern PLACE =
            Pattern.compile(
                    "\\s*([-+]?\\d{1,3}(?:\\.\\d{1,12})?)\\s*,\\s*([-+]?\\d{1,3}(?:\\.\\d{1,12})?)\\s*");

    /// Nobody flies by the sun of another century, and far from ours its time by the clock is a
    /// guess, as the earth's rotation is.
    private static final int FIRST_YEAR = 1900;

    private static final int LAST_YEAR = 2100;

    private DaylightInput() {}

    /// @throws Refusal.Invalid if the place or the zone is none
    static Place place(String place, String zone) {
        Matcher parts = PLACE.matcher(place);
        if (!parts.matches()) {
            throw new Refusal.Invalid(
                    "place",
                    "--place: “%s” is no place. Write latitude and longitude in degrees with decimal points, south and west negative, such as 47.27,11.39."
                            .formatted(place));
        }
        return new Place(
                within("latitude", parts.group(1), 90),
                within("longitude", parts.group(2), 180),
                zone(zone));
    }

    private static double within(String what, String typed, int most) {
        double degrees = Double.parseDouble(typed);
        if (Math.abs(degrees) > most) {
            throw new Refusal.Invalid(
                    "place",
                    "--place: the %s %s is not from -%d to %d. The latitude comes first."
                            .formatted(what, typed, most, most));
        }
        return degrees;
    }

    private static ZoneId zone(String zone) {
        try {
            return ZoneId.of(zone);
        } catch (DateTimeException none) {
            throw new Refusal.Invalid(
                    "zone", "--zone: “%s” is no time zone. %s".formatted(zone, zoneRemedy(zone)));
        }
    }

    private static String zoneRemedy(String zone) {
        String wanted = zone.strip().replace(' ', '_').toLowerCase(Locale.ROOT);
        List<String> near =
                ZoneId.getAvailableZoneIds().stream()
                        .filter(id -> ("/" + id.toLowerCase(Locale.ROOT)).endsWith("/" + wanted))
                        .sorted()
                        .toList();
        return near.isEmpty()
                ? "Write one such as Europe/Vienna or UTC."
                : "Did you mean " + String.join(" or ", near) + "?";
    }

    /// @throws Refusal.Invalid if it is no day of the years that can be computed
    static LocalDate date(String date) {
        LocalDate day = parsed(date);
        if (day.getYear() < FIRST_YEAR || day.getYear() > LAST_YEAR) {
            throw new Refusal.Invalid(
                    "date",
                    "--date: %s is not in the years %d to %d."
                            .formatted(date, FIRST_YEAR, LAST_YEAR));
        }
        return day;
    }

    private static LocalDate parsed(String date) {
        try {
            return LocalDate.parse(date);
        } catch (DateTimeException none) {
            throw new Refusal.Invalid(
                    "date",
                    "--date: “%s” is no date. Write year, month and day, such as 2025-06-21."
                            .formatted(date));
        }
    }
}
