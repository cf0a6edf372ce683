package org.groundline.school;

import org.groundline.database.SubjectId;
import org.groundline.database.Violation;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.jooq.DSLContext;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;

/// The intakes of a school and who is in them. Asks nobody for a right; the door has done so.
final class Enrolment {
    private static final int LONGEST = 80;

    private final Foundation foundation;

    Enrolment(Foundation foundation) {
        this.foundation = foundation;
    }

    Intake begin(School school, String name, LocalDate startsOn) {
        if (name.isBlank() || name.length() > LONGEST) {
            throw new Refusal.Invalid("name", "An intake's name has 1 to 80 letters.");
        }
        var intake = new Intake(foundation.ids().next(), name.strip(), startsOn);
        try {
            foundation
                    .database()
                    .doInSchool(
                            school.id(),
                            tx -> new IntakeRepository(tx, school.id()).insert(intake));
        } catch (Violation e) {
            throw new Refusal.Conflict(
                    "The school has an intake called %s already.".formatted(name));
        }
        return intake;
    }

    void join(School school, UUID intake, List<SubjectId> subjects) {
        LocalDate today = school.dayOf(foundation.now());
        foundation
                .database()
                .doInSchool(
                        school.id(),
                        tx -> subjects.forEach(s -> join(tx, school, intake, s, today)));
    }

    private static void join(
            DSLContext tx, School school, UUID intake, SubjectId subject, LocalDate day) {
        var intakes = new IntakeRepository(tx, school.id());
        Intake wanted = intakes.getIntake(intake);
        Person person = new PersonRepository(tx, school.id()).getPerson(subject);
        intakes.insertMember(wanted.id(), person.subject(), day);
    }

    List<Intake> listAll(School school) {
        return read(school, IntakeRepository::listAll);
    }

    List<Intake> listOf(School school, SubjectId subject) {
        return read(school, intakes -> intakes.listOf(subject));
    }

    Intake getIntake(School school, UUID id) {
        return read(school, intakes -> intakes.getIntake(id));
    }

    private <T> T read(School school, Function<IntakeRepository, T> what) {
        return foundation
                .database()
                .inSchool(school.id(), tx -> what.apply(new IntakeRepository(tx, school.id())));
    }
}
