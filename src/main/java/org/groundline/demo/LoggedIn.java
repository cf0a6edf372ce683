package org.groundline.demo;

import org.groundline.school.Actor;
import org.groundline.school.School;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/// Who is logged in. People log in with their password when they do something, and again when their
/// session is about to end.
final class LoggedIn {
    private static final Duration USED_FOR = Duration.ofHours(10);

    private final DemoDoors doors;
    private final School school;
    private final String password;
    private final Map<String, Session> sessions = new HashMap<>();

    LoggedIn(DemoDoors doors, School school, String password) {
        this.doors = doors;
        this.school = school;
        this.password = password;
    }

    private record Session(Actor actor, Instant usedUntil) {}

    Actor as(String email) {
        Instant now = doors.foundation().now();
        Session session =
                sessions.compute(
                        email,
                        (who, before) ->
                                before != null && now.isBefore(before.usedUntil())
                                        ? before
                                        : logIn(who, now));
        return session.actor();
    }

    private Session logIn(String email, Instant now) {
        String token = doors.logins().logIn(school, email, password);
        Actor actor = doors.logins().findActor(school, token).orElseThrow();
        return new Session(actor, now.plus(USED_FOR));
    }
}
