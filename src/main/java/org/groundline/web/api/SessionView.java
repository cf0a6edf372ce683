package org.groundline.web.api;

import org.groundline.school.Actor;
import org.groundline.school.Role;

import java.util.List;

/// A log-in.
///
/// @param token to be sent as a bearer token; it is told once
record SessionView(String token, NamedView person, List<String> roles) {
    static SessionView of(String token, Actor actor) {
        return new SessionView(
                token, new NamedView(actor.subject().value(), actor.name()), words(actor));
    }

    private static List<String> words(Actor actor) {
        return actor.roles().stream().map(Role::word).sorted().toList();
    }
}
