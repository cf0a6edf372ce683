package org.groundline.demo;

import org.groundline.bank.Questions;
import org.groundline.school.Actor;
import org.groundline.school.School;

import java.time.Instant;

/// What every part of the simulation works with.
///
/// @param analyse renews the statistics that the database plans its queries by
record World(
        Roster roster,
        DemoDoors doors,
        Agenda agenda,
        School school,
        Calendar calendar,
        LoggedIn loggedIn,
        Runnable analyse) {
    Actor as(String email) {
        return loggedIn.as(email);
    }

    Instant now() {
        return doors.foundation().now();
    }

    /// How many days before the present it is. Chance goes by it and not by the date, so that the
    /// history is much the same whenever the school is made.
    long daysBefore() {
        return calendar.daysBefore(now());
    }

    Questions bank() {
        return doors.bank();
    }
}
