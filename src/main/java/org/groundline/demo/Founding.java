package org.groundline.demo;

import org.groundline.database.SubjectId;
import org.groundline.school.Actor;
import org.groundline.school.People.NewAuthorisation;
import org.groundline.school.People.NewPerson;
import org.groundline.school.Role;
import org.groundline.school.School;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// Enters the people of the school: the chief instructor as its set-up does, everybody else by the
/// chief instructor.
final class Founding {
    private final World world;
    private final Chance chance;

    Founding(World world, Chance chance) {
        this.world = world;
        this.chance = chance;
    }

    /// Enters the staff; the first of the file is the chief instructor.
    ///
    /// @param present the day from which authorisations are counted
    void enterStaff(LocalDate present) {
        Optional<Actor> by = Optional.empty();
        for (Roster.Staff person : world.roster().staff()) {
            SubjectId subject =
                    enter(by, person.given(), person.family(), person.email(), person.granted());
            if (person.authorisation().isPresent()) {
                authorise(by, subject, person.authorisation().get(), present);
            }
            by = Optional.of(world.as(chief()));
        }
    }

    private String chief() {
        return world.roster().first(Role.CHIEF_INSTRUCTOR).email();
    }

    private void authorise(
            Optional<Actor> by, SubjectId subject, Roster.Paper paper, LocalDate present) {
        var wish =
                new NewAuthorisation(
                        paper.number(),
                        paper.methods(),
                        world.roster().issuer(),
                        present.minusDays(paper.authorised()),
                        present.plusDays(paper.until()));
        world.doors().people().authorise(world.school(), by, subject, wish);
    }

    private SubjectId enter(
            Optional<Actor> by, String given, String family, String email, Set<Role> roles) {
        var person = new NewPerson(given, family, email, world.roster().password());
        return world.doors().people().enter(world.school(), by, person, roles);
    }

    /// Begins an intake without anybody in it.
    Group begin(Roster.Intake plan) {
        School school = world.school();
        LocalDate today = school.dayOf(world.now());
        Optional<Actor> by = Optional.of(world.as(chief()));
        var intake = world.doors().people().beginIntake(school, by, plan.name(), today);
        return new Group(plan, intake.id());
    }

    /// Enters some students and puts them into an intake.
    void join(Group group, List<Roster.Student> students) {
        Actor by = world.as(chief());
        students.forEach(plan -> group.add(join(group, plan, by)));
    }

    private Student join(Group group, Roster.Student plan, Actor by) {
        SubjectId subject =
                enter(
                        Optional.of(by),
                        plan.given(),
                        plan.family(),
                        plan.email(),
                        Set.of(Role.STUDENT));
        world.doors().people().join(world.school(), Optional.of(by), group.intake(), subject);
        Chance own = chance.of(plan.email());
        var mind = new Mind(world.bank(), group.plan(), plan.ability(), own.of("mind"));
        return new Student(subject, plan.email(), mind, own);
    }
}
