package org.groundline.demo;

import org.groundline.school.School;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;

/// Names instants of the school's past by days before the present and times of the day.
record Calendar(School school, Instant present) {
    Instant at(int daysBefore, LocalTime time) {
        return today().minusDays(daysBefore).atTime(time).atZone(school.zone()).toInstant();
    }

    long daysBefore(Instant past) {
        return ChronoUnit.DAYS.between(school.dayOf(past), today());
    }

    LocalDate today() {
        return school.dayOf(present);
    }
}
