package org.groundline.record;

import org.groundline.bank.Course;
import org.groundline.bank.Demonstration;
import org.groundline.bank.Module;
import org.groundline.database.SubjectId;
import org.groundline.ledger.Foundation;
import org.groundline.record.RecordRepository.Evidence;
import org.groundline.record.RecordRepository.Observed;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.People;
import org.groundline.school.Person;
import org.groundline.school.School;
import org.groundline.sitting.Sittings;
import org.jooq.DSLContext;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// Where students stand: one with all the evidence, or many for the class board.
public final class StudentRecords {
    private final Foundation foundation;
    private final Course course;
    private final People people;
    private final Sittings sittings;

    public StudentRecords(Foundation foundation, Course course, Sittings sittings) {
        this.foundation = foundation;
        this.course = course;
        this.people = new People(foundation);
        this.sittings = sittings;
    }

    /// Returns a student's record; for the student and for staff.
    ///
    /// @throws org.groundline.error.Refusal.NotFound if there is no such person, or none the actor
    ///   may know of
    public StudentRecord getRecord(Actor actor, SubjectId subject) {
        actor.requireFor(Action.READ_COURSE, subject);
        sittings.closeOverdue(actor.school().id());
        Person person = people.getPerson(actor.school(), subject);
        return foundation
                .database()
                .inSchool(
                        actor.school().id(),
                        tx -> recordsOf(tx, actor.school(), List.of(person)).get(0));
    }

    /// Returns the records of an intake's students, or of all, sorted by name.
    public List<StudentRecord> listBoard(Actor actor, Optional<UUID> intake) {
        actor.require(Action.READ_BOARD);
        sittings.closeOverdue(actor.school().id());
        intake.ifPresent(id -> people.getIntake(actor.school(), id));
        List<Person> students = people.listStudents(actor.school(), intake);
        return foundation
                .database()
                .inSchool(actor.school().id(), tx -> recordsOf(tx, actor.school(), students));
    }

    List<StudentRecord> recordsOf(DSLContext tx, School school, List<Person> students) {
        var rows = new RecordRepository(tx, school.id());
        List<SubjectId> subjects = students.stream().map(Person::subject).toList();
        var all =
                new AllEvidence(
                        rows.listAttempts(subjects),
                        rows.listOpen(subjects),
                        rows.listToTalkThrough(subjects),
                        rows.listObserved(subjects),
                        rows.listSignOffs(subjects));
        return students.stream().map(student -> all.recordOf(student, course)).toList();
    }

    private record AllEvidence(
            List<Evidence<Attempt>> attempts,
            List<Evidence<UUID>> open,
            List<Evidence<TalkItem>> talks,
            List<Evidence<Observed>> observed,
            List<Evidence<SignOff>> signOffs) {
        StudentRecord recordOf(Person student, Course course) {
            return new StudentRecord(
                    student,
                    course.modules().stream()
                            .map(m -> moduleRecord(student.subject(), m))
                            .toList());
        }

        private ModuleRecord moduleRecord(SubjectId subject, Module module) {
            return new ModuleRecord(
                    module,
                    of(attempts, subject, module),
                    !of(open, subject, module).isEmpty(),
                    of(talks, subject, module),
                    module.demonstrations().stream().map(d -> shown(subject, d)).toList(),
                    of(signOffs, subject, module));
        }

        private ShownDemonstration shown(SubjectId subject, Demonstration demonstration) {
            Optional<ShownDemonstration.Observation> first =
                    observed.stream()
                            .filter(e -> e.subject().equals(subject))
                            .filter(e -> e.what().demonstration().equals(demonstration.id()))
                            .findFirst()
                            .map(
                                    e ->
                                            new ShownDemonstration.Observation(
                                                    e.what().observer(), e.what().at()));
            return new ShownDemonstration(demonstration, first);
        }

        private static <T> List<T> of(
                Collection<Evidence<T>> all, SubjectId subject, Module module) {
            return all.stream()
                    .filter(e -> e.subject().equals(subject) && e.module().equals(module.id()))
                    .map(Evidence::what)
                    .toList();
        }
    }
}
