package org.groundline.web.api;

import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.school.Actor;
import org.groundline.school.School;
import org.groundline.web.Doors;

import java.util.Optional;

/// A student's record as the API gives it out; its bytes are what its entity tag stands for.
final class Records {
    private final Doors doors;

    Records(Doors doors) {
        this.doors = doors;
    }

    /// The record of a person as JSON.
    byte[] of(Actor actor, SubjectId subject) {
        var record = doors.records().getRecord(actor, subject);
        return Json.bytes(
                RecordView.of(
                        record,
                        staff -> named(actor.school(), staff),
                        reversal -> doors.signOffs().findReason(actor, reversal)));
    }

    /// A person by name; without one where it was erased.
    private NamedStaffView named(School school, SubjectId subject) {
        Optional<String> name;
        try {
            name = Optional.of(doors.people().getPerson(school, subject).name());
        } catch (Refusal.NotFound erased) {
            name = Optional.empty();
        }
        return new NamedStaffView(subject.value(), name);
    }
}
