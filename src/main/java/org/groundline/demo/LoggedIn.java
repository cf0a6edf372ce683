package org.groundline.demo;

import static java.util.Objects.requireNonNull;

import org.groundline.school.Actor;
import org.groundline.school.School;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
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
        logIn(List.of(email));
        return requireNonNull(sessions.get(email)).actor();
    }

    /// Logs some people in, where they are not yet; together, as checking passwords takes long.
    void logIn(List<String> emails) {
        Instant now = doors.foundation().now();
        List<String> missing = emails.stream().filter(email -> !isIn(email, now)).toList();
        List<Session> begun = missing.parallelStream().map(email -> begin(email, now)).toList();
        for (int i = 0; i < begun.size(); i++) {
            sessions.put(missing.get(i), begun.get(i));
        }
    }

    private boolean isIn(String email, Instant now) {
        Session session = sessions.get(email);
        return session != null && now.isBefore(session.usedUntil());
    }

    private Session begin(String email, Instant now) {
        String token = doors.logins().logIn(school, email, password);
        Actor actor = doors.logins().findActor(school, token).orElseThrow();
        return new Session(actor, now.plus(USED_FOR));
    }
}
