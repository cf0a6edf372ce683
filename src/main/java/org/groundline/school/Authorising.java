package org.groundline.school;

import org.groundline.database.SubjectId;
import org.groundline.ledger.Entry;
import org.groundline.ledger.EntryKind;
import org.groundline.ledger.Foundation;
import org.groundline.school.People.NewAuthorisation;
import org.jooq.DSLContext;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/// What instructors may sign for: entered into the school's rows and its ledger together. Asks
/// nobody for a right; the door has done so.
final class Authorising {
    private final Foundation foundation;

    Authorising(Foundation foundation) {
        this.foundation = foundation;
    }

    Authorisation enter(
            School school, Optional<SubjectId> by, SubjectId subject, NewAuthorisation wish) {
        var authorisation =
                new Authorisation(
                        foundation.ids().next(),
                        wish.number(),
                        "paraglider",
                        wish.launchMethods(),
                        wish.issuer(),
                        wish.validFrom(),
                        wish.validUntil());
        foundation
                .database()
                .doInSchool(school.id(), tx -> enter(tx, school, by, subject, authorisation));
        return authorisation;
    }

    private void enter(
            DSLContext tx,
            School school,
            Optional<SubjectId> by,
            SubjectId subject,
            Authorisation authorisation) {
        Person person = new PersonRepository(tx, school.id()).getPerson(subject);
        new RoleRepository(tx, school.id()).insertAuthorisation(person.subject(), authorisation);
        foundation.ledger().write(tx, school.id(), entry(by, subject, authorisation));
    }

    private Entry entry(Optional<SubjectId> by, SubjectId subject, Authorisation authorisation) {
        Map<String, Object> facts =
                Map.of(
                        "authorisation", authorisation.id().toString(),
                        "discipline", authorisation.discipline(),
                        "launchMethods", authorisation.launchMethods(),
                        "validFrom", authorisation.validFrom().toString(),
                        "validUntil", authorisation.validUntil().toString());
        return new Entry(
                EntryKind.AUTHORISATION, foundation.now(), Optional.of(subject), by, facts);
    }

    Optional<Authorisation> find(
            DSLContext tx, School school, SubjectId subject, String discipline) {
        LocalDate today = school.dayOf(foundation.now());
        return new RoleRepository(tx, school.id())
                .listAuthorisations(subject).stream()
                        .filter(a -> a.covers(discipline, today))
                        .findFirst();
    }
}
