package org.groundline.daylight;

import org.shredzone.commons.suncalc.SunTimes;
import org.shredzone.commons.suncalc.SunTimes.Twilight;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.Optional;

/// When the day begins and ends at a place, over a flat horizon at sea level: a mountain hides the
/// sun sooner.
///
/// Sunrise and sunset: the sun's upper limb on the horizon, with refraction. Civil twilight: the
/// sun's centre 6° below it; its end is the beginning of night in the ICAO's vocabulary.
///
/// The library gives the *next* event after an instant. Asked from midnight in another zone than
/// the place's, or for a dusk that falls after midnight, it would give one of the wrong day. So the
/// morning's events are looked for from noon of the day before, and the evening's from noon of the
/// day, each within a day, by the place's own clock.
public final class Daylight {
    /// What is looked for.
    public enum Event {
        CIVIL_DAWN(Twilight.CIVIL, true),
        SUNRISE(Twilight.VISUAL, true),
        SUNSET(Twilight.VISUAL, false),
        CIVIL_DUSK(Twilight.CIVIL, false);

        private final Twilight twilight;
        private final boolean morning;

        Event(Twilight twilight, boolean morning) {
            this.twilight = twilight;
            this.morning = morning;
        }
    }

    /// Why an event does not happen on a day.
    public enum Absence {
        SUN_STAYS_ABOVE,
        SUN_STAYS_BELOW,

        /// The sun crosses the line in the other direction only, at the edge of a polar summer or
        /// winter.
        NOT_THIS_DAY
    }

    private static final Duration ONE_DAY = Duration.ofDays(1);

    private Daylight() {}

    /// Finds when an event of this local day happens; a dusk after midnight belongs to the evening
    /// before. Empty where the sun does not cross that line, as in a polar summer or winter.
    public static Optional<Instant> find(Event event, Place place, LocalDate day) {
        var times = times(event, place, day);
        return Optional.ofNullable(event.morning ? times.getRise() : times.getSet())
                .map(ZonedDateTime::toInstant);
    }

    /// Why [#find] finds nothing.
    public static Absence absence(Event event, Place place, LocalDate day) {
        var times = times(event, place, day);
        if (times.isAlwaysUp()) {
            return Absence.SUN_STAYS_ABOVE;
        }
        return times.isAlwaysDown() ? Absence.SUN_STAYS_BELOW : Absence.NOT_THIS_DAY;
    }

    private static SunTimes times(Event event, Place place, LocalDate day) {
        var noon = (event.morning ? day.minusDays(1) : day).atTime(LocalTime.NOON);
        return SunTimes.compute()
                .on(noon.atZone(place.zone()))
                .at(place.latitudeDeg(), place.longitudeDeg())
                .twilight(event.twilight)
                .limit(ONE_DAY)
                .execute();
    }
}
