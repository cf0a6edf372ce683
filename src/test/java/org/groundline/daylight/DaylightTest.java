package org.groundline.daylight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.daylight.Daylight.Absence;
import org.groundline.daylight.Daylight.Event;
import org.junit.jupiter.api.Test;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;

/// The times themselves are held against published ones by the check values of theory.
class DaylightTest {
    private static final Place ALPS = new Place(47, 11, ZoneId.of("Europe/Vienna"));
    private static final Place SYDNEY = new Place(-33.74, 151.23, ZoneId.of("Australia/Sydney"));
    private static final Place EQUATOR = new Place(0, 0, ZoneId.of("UTC"));
    private static final Place NORTH = new Place(60, 10, ZoneId.of("Europe/Oslo"));
    private static final Place ARCTIC = new Place(70, 25, ZoneId.of("Europe/Oslo"));

    @Test
    void dawnSunriseSunsetAndDuskFollowOneAnotherOnEachDayOfTheYear() {
        for (Place place : new Place[] {ALPS, SYDNEY, EQUATOR}) {
            for (int day = 1; day <= 365; day++) {
                var date = LocalDate.ofYearDay(2025, day);
                var dawn = at(Event.CIVIL_DAWN, place, date);
                var dusk = at(Event.CIVIL_DUSK, place, date);
                assertThat(at(Event.SUNRISE, place, date)).isAfter(dawn);
                assertThat(at(Event.SUNSET, place, date))
                        .isAfter(at(Event.SUNRISE, place, date))
                        .isBefore(dusk);
                assertThat(Duration.between(dawn, dusk)).isLessThan(Duration.ofDays(1));
            }
        }
    }

    @Test
    void eachEventFallsOnTheLocalDayAskedForEvenWhereItIsAnotherDayInUniversalTime() {
        var date = LocalDate.of(2019, 7, 3);
        var sunrise = at(Event.SUNRISE, SYDNEY, date);
        assertThat(sunrise.atZone(SYDNEY.zone()).toLocalDate()).isEqualTo(date);
        assertThat(sunrise.atZone(ZoneId.of("UTC")).toLocalDate()).isEqualTo(date.minusDays(1));
    }

    @Test
    void aDuskAfterMidnightBelongsToTheEveningBefore() {
        var date = LocalDate.of(2025, 6, 21);
        var dusk = at(Event.CIVIL_DUSK, NORTH, date);
        assertThat(dusk.atZone(NORTH.zone()).toLocalDate()).isEqualTo(date.plusDays(1));
        assertThat(dusk).isAfter(at(Event.SUNSET, NORTH, date));
    }

    /// 21 min on the equator and 54 min at 60° N on 1 May, worked out by hand with the same
    /// library.
    @Test
    void civilTwilightIsNotHalfAnHourEverywhere() {
        assertThat(twilight(EQUATOR, LocalDate.of(2025, 3, 20)))
                .isBetween(Duration.ofMinutes(20), Duration.ofMinutes(22));
        assertThat(twilight(NORTH, LocalDate.of(2025, 5, 1)))
                .isBetween(Duration.ofMinutes(53), Duration.ofMinutes(55));
    }

    @Test
    void inThePolarSummerTheSunDoesNotSetAndInThePolarWinterItDoesNotRise() {
        assertThat(Daylight.find(Event.SUNSET, ARCTIC, LocalDate.of(2025, 6, 21))).isEmpty();
        assertThat(Daylight.find(Event.SUNRISE, ARCTIC, LocalDate.of(2025, 12, 21))).isEmpty();
        assertThat(Daylight.find(Event.CIVIL_DAWN, ARCTIC, LocalDate.of(2025, 12, 21))).isPresent();
    }

    @Test
    void whyThereIsNoEventIsTold() {
        assertThat(Daylight.absence(Event.SUNSET, ARCTIC, LocalDate.of(2025, 6, 21)))
                .isEqualTo(Absence.SUN_STAYS_ABOVE);
        assertThat(Daylight.absence(Event.SUNRISE, ARCTIC, LocalDate.of(2025, 12, 21)))
                .isEqualTo(Absence.SUN_STAYS_BELOW);
    }

    /// Once in spring the sun sets no more, and once in summer it sets again; on the days between
    /// an evening without a sunset is one on which the sun stays up, or the very edge.
    @Test
    void everyDayOfAnArcticYearHasASunsetOrAReasonWhyNot() {
        var reasons = EnumSet.noneOf(Absence.class);
        for (int day = 1; day <= 365; day++) {
            var date = LocalDate.ofYearDay(2025, day);
            if (Daylight.find(Event.SUNSET, ARCTIC, date).isEmpty()) {
                reasons.add(Daylight.absence(Event.SUNSET, ARCTIC, date));
            }
        }
        assertThat(reasons).contains(Absence.SUN_STAYS_ABOVE, Absence.SUN_STAYS_BELOW);
    }

    @Test
    void aPlaceOffTheEarthIsRefused() {
        assertThatThrownBy(() -> new Place(91, 0, ZoneId.of("UTC")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("latitude (°)")
                .hasMessageContaining("91");
        assertThatThrownBy(() -> new Place(0, Double.NaN, ZoneId.of("UTC")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("longitude (°)");
    }

    private static Duration twilight(Place place, LocalDate date) {
        return Duration.between(at(Event.SUNSET, place, date), at(Event.CIVIL_DUSK, place, date));
    }

    private static Instant at(Event event, Place place, LocalDate date) {
        return Daylight.find(event, place, date).orElseThrow();
    }
}
