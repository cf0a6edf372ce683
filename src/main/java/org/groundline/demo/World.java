package org.groundline.demo;

import org.groundline.bank.Questions;
import org.groundline.school.Actor;
import org.groundline.school.School;

import java.time.Instant;

/// What every part of the simulation works with.
record World(Roster roster, DemoDoors doors, Agenda agenda, School school, LoggedIn loggedIn) {
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
