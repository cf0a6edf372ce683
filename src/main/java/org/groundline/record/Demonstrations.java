package org.groundline.record;

import org.groundline.bank.Course;
import org.groundline.bank.Demonstration;
import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.ledger.Entry;
import org.groundline.ledger.EntryKind;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.People;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// Things shown and observed.
public final class Demonstrations {
    private final Foundation foundation;
    private final Course course;

    public Demonstrations(Foundation foundation, Course course) {
        this.foundation = foundation;
        this.course = course;
    }

    /// Enters that the actor has just seen a student show something.
    ///
    /// @throws Refusal.NotFound if the syllabus has no such demonstration, or the school no such
    ///   person
    /// @throws Refusal.Conflict if the student and the observer are one
    public void observe(Actor actor, SubjectId student, String demonstration, String note) {
        actor.require(Action.ENTER_DEMONSTRATION);
        Notes.requireNotOwn(actor, student);
        Demonstration known =
                course.findDemonstration(demonstration)
                        .orElseThrow(
                                () ->
                                        new Refusal.NotFound(
                                                "The syllabus has no such demonstration."));
        SubjectId present = new People(foundation).getPerson(actor.school(), student).subject();
        foundation
                .database()
                .doInSchool(actor.school().id(), tx -> enter(tx, actor, present, known, note));
    }

    private void enter(
            DSLContext tx,
            Actor actor,
            SubjectId student,
            Demonstration demonstration,
            String note) {
        Instant now = foundation.now();
        UUID id = foundation.ids().next();
        Optional<UUID> noteId = new Notes(foundation).write(tx, actor, student, note);
        new EntryRepository(tx, actor.school().id())
                .insertDemonstration(
                        id,
                        new EntryRepository.Deed(student, actor.subject(), now, noteId),
                        demonstration.id());
        Map<String, Object> facts =
                Map.of("demonstration", demonstration.id(), "entry", id.toString());
        var entry =
                new Entry(
                        EntryKind.DEMONSTRATION,
                        now,
                        Optional.of(student),
                        Optional.of(actor.subject()),
                        facts);
        foundation.ledger().write(tx, actor.school().id(), entry);
    }
}
