package org.groundline.record;

import org.groundline.authoring.AirLaw;
import org.groundline.bank.Course;
import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.ledger.Entry;
import org.groundline.ledger.EntryKind;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Authorisation;
import org.groundline.school.Logins;
import org.groundline.school.People;
import org.groundline.school.Person;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// Signing a module's theory off, and taking that back by a counter-entry. Both ask for the
/// password again.
public final class SignOffs {
    private final Foundation foundation;
    private final Course course;
    private final StudentRecords records;
    private final People people;
    private final Logins logins;
    private final AirLaw airLaw;

    public SignOffs(
            Foundation foundation,
            Course course,
            StudentRecords records,
            Logins logins,
            AirLaw airLaw) {
        this.foundation = foundation;
        this.course = course;
        this.records = records;
        this.people = new People(foundation);
        this.logins = logins;
        this.airLaw = airLaw;
    }

    /// Signs a module off for a student.
    ///
    /// @return the id of the sign-off
    /// @throws Refusal.Invalid if the password is not the actor's
    /// @throws Refusal.Conflict if a requirement is not met, it is signed already, the actor holds
    ///   no authorisation for the discipline today, or would sign for themselves
    public UUID signOff(Actor actor, SubjectId student, String module, String password) {
        actor.require(Action.SIGN_OFF);
        Notes.requireNotOwn(actor, student);
        Person person = people.getPerson(actor.school(), student);
        logins.requirePassword(actor, password);
        return foundation
                .database()
                .inSchool(actor.school().id(), tx -> signOff(tx, actor, person, module));
    }

    private UUID signOff(DSLContext tx, Actor actor, Person student, String moduleId) {
        var rows = new EntryRepository(tx, actor.school().id());
        rows.lockSignOffsOf(student.subject());
        ModuleRecord module =
                records.recordsOf(tx, actor.school(), List.of(student)).get(0).getModule(moduleId);
        requireLaw(tx, actor, moduleId);
        Attempt basis = readyBasis(module);
        Authorisation authorisation =
                people.findAuthorisation(tx, actor.school(), actor.subject(), course.discipline())
                        .orElseThrow(
                                () ->
                                        new Refusal.Conflict(
                                                "You hold no authorisation for %s that is valid today, so you cannot sign."
                                                        .formatted(course.discipline())));
        Instant now = foundation.now();
        var signOff =
                new SignOff(
                        foundation.ids().next(),
                        basis.sitting(),
                        actor.subject(),
                        now,
                        Optional.empty());
        var deed =
                new EntryRepository.Deed(student.subject(), actor.subject(), now, Optional.empty());
        rows.insertSignOff(signOff, deed, moduleId, course.discipline(), authorisation.id());
        Map<String, Object> facts =
                Map.of(
                        "signOff", signOff.id().toString(),
                        "course", course.id(),
                        "module", moduleId,
                        "discipline", course.discipline(),
                        "basis", basis.sitting().toString(),
                        "authorisation", authorisation.id().toString());
        enter(tx, actor, deed, new Entered(EntryKind.SIGN_OFF, Action.SIGN_OFF, facts));
        return signOff.id();
    }

    /// National law is never taken for known: nobody overrides this.
    private void requireLaw(DSLContext tx, Actor actor, String module) {
        if (airLaw.concerns(module) && !airLaw.isLive(tx, actor.school())) {
            throw new Refusal.Conflict(
                    "Not yet: the school’s own questions on the law of its country are not complete,"
                            + " so air law cannot be signed off. The page “Air law” among the questions"
                            + " shows what is missing.");
        }
    }

    private static Attempt readyBasis(ModuleRecord module) {
        return switch (module.state()) {
            case ModuleState.Ready() -> module.basis().orElseThrow();
            case ModuleState.SignedOff(Instant at) ->
                    throw new Refusal.Conflict("This module is signed off already.");
            case ModuleState.Passed(int talks, int demonstrations) ->
                    throw new Refusal.Conflict(
                            "Not yet: %d safety-critical answers to be talked through and %d demonstrations to be observed."
                                    .formatted(talks, demonstrations));
            case ModuleState.Sitting() ->
                    throw new Refusal.Conflict("Not yet: the test is being sat.");
            case ModuleState.NotPassed(int hundredths, int possible, int passMark) ->
                    throw new Refusal.Conflict("Not yet: the last test was not passed.");
            case ModuleState.NotBegun() ->
                    throw new Refusal.Conflict("Not yet: no test of this module was sat.");
        };
    }

    /// What an entry says, and the action that made it.
    private record Entered(EntryKind kind, Action action, Map<String, Object> facts) {}

    private void enter(DSLContext tx, Actor actor, EntryRepository.Deed deed, Entered what) {
        var subject = Optional.of(deed.student());
        var by = Optional.of(deed.by());
        foundation
                .ledger()
                .write(
                        tx,
                        actor.school().id(),
                        new Entry(what.kind(), deed.at(), subject, by, what.facts()));
        foundation
                .audit()
                .write(
                        tx,
                        actor.school().id(),
                        by,
                        subject,
                        what.action().word(),
                        "sign-off " + what.facts().get("signOff"));
    }

    /// Reverses a sign-off, with a reason; both entries stay.
    ///
    /// @throws Refusal.Invalid if there is no reason, or the password is not the actor's
    /// @throws Refusal.NotFound if the student has no such sign-off
    /// @throws Refusal.Conflict if it was reversed before
    public void reverse(
            Actor actor, SubjectId student, UUID signOff, String reason, String password) {
        actor.require(Action.REVERSE);
        Notes.requireNotOwn(actor, student);
        if (reason.isBlank()) {
            throw new Refusal.Invalid("reason", "A reversal needs a reason. Nothing was changed.");
        }
        logins.requirePassword(actor, password);
        foundation
                .database()
                .doInSchool(
                        actor.school().id(), tx -> reverse(tx, actor, student, signOff, reason));
    }

    private void reverse(DSLContext tx, Actor actor, SubjectId student, UUID id, String reason) {
        var rows = new EntryRepository(tx, actor.school().id());
        rows.lockSignOffsOf(student);
        SignOff signOff =
                new RecordRepository(tx, actor.school().id())
                        .listSignOffs(List.of(student)).stream()
                                .map(RecordRepository.Evidence::what)
                                .filter(s -> s.id().equals(id))
                                .findFirst()
                                .orElseThrow(
                                        () ->
                                                new Refusal.NotFound(
                                                        "The student has no such sign-off."));
        if (!signOff.stands()) {
            throw new Refusal.Conflict("This sign-off was reversed already.");
        }
        Optional<UUID> note = new Notes(foundation).write(tx, actor, student, reason);
        var deed = new EntryRepository.Deed(student, actor.subject(), foundation.now(), note);
        rows.insertReversal(id, deed);
        enter(
                tx,
                actor,
                deed,
                new Entered(EntryKind.REVERSAL, Action.REVERSE, Map.of("signOff", id.toString())));
    }

    /// Returns the reason of a reversal, unless it was erased.
    public Optional<String> findReason(Actor actor, SignOff.Reversal reversal) {
        actor.requireAtAll(Action.READ_COURSE);
        return foundation
                .database()
                .inSchool(
                        actor.school().id(),
                        tx ->
                                new EntryRepository(tx, actor.school().id())
                                        .findNote(reversal.note()));
    }
}
