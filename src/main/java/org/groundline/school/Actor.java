package org.groundline.school;

import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;

import java.util.Set;

/// Who is asking: a person logged in to a school, with the roles in force at that moment. Every
/// door that reads or changes records takes one and asks it first.
///
/// @param name as shown to the actor and to those who see what the actor did
/// @param session digest of the log-in's token as hexadecimal text; tells one device and browser
///   from another
public record Actor(
        School school, SubjectId subject, String name, Set<Role> roles, String session) {
    public Actor {
        roles = Set.copyOf(roles);
    }

    /// Whether the actor may do this to everybody's records in the school.
    public boolean may(Action action) {
        return Permissions.SHIPPED.widest(action, roles).includes(Scope.SCHOOL);
    }

    /// Whether the actor may do this to a person's records.
    public boolean mayFor(Action action, SubjectId whose) {
        Scope needed = whose.equals(subject) ? Scope.OWN : Scope.SCHOOL;
        return Permissions.SHIPPED.widest(action, roles).includes(needed);
    }

    /// Whether the actor may do this at all, if only to their own records.
    public boolean mayAtAll(Action action) {
        return Permissions.SHIPPED.widest(action, roles).includes(Scope.OWN);
    }

    /// Refuses unless the actor may do this to everybody's records.
    public void require(Action action) {
        if (!may(action)) {
            throw forbidden();
        }
    }

    /// Refuses unless the actor may do this at all.
    public void requireAtAll(Action action) {
        if (!mayAtAll(action)) {
            throw forbidden();
        }
    }

    /// Refuses unless the actor may do this to this person's records. Who may only touch their own
    /// is not told whether the other's exist.
    public void requireFor(Action action, SubjectId whose) {
        requireAtAll(action);
        if (!mayFor(action, whose)) {
            throw new Refusal.NotFound("There is no such record, or it is not yours to see.");
        }
    }

    private static Refusal forbidden() {
        return new Refusal.Forbidden(
                "Your role in this school does not include this. Ask your chief instructor.");
    }
}
