package org.groundline.web.api;

import org.groundline.school.Person;
import org.groundline.school.Role;

import java.util.List;
import java.util.Set;
import java.util.UUID;

/// A person with their roles now.
record PersonView(
        UUID subject, String givenName, String familyName, String email, List<String> roles) {
    static PersonView of(Person person, Set<Role> roles) {
        return new PersonView(
                person.subject().value(),
                person.givenName(),
                person.familyName(),
                person.email(),
                roles.stream().map(Role::word).sorted().toList());
    }
}
