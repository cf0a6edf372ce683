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
        LoggedIn loggedIn,
        Runnable analyse) {
    Actor as(String email) {
        return loggedIn.as(email);
    }

    Instant now() {
        return doors.foundation().now();
    }

    Questions bank() {
        return doors.bank();
    }
}
