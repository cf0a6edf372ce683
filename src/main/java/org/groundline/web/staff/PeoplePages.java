package org.groundline.web.staff;

import io.javalin.http.Context;

import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.school.People.Member;
import org.groundline.school.People.NewAuthorisation;
import org.groundline.school.People.NewPerson;
import org.groundline.school.Person;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Returned;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Times;
import org.groundline.web.staff.words.PeopleWords;
import org.groundline.web.staff.words.SharedWords;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/// Who belongs to the school, and in which intake.
public final class PeoplePages {
    private final Doors doors;

    PeoplePages(Doors doors) {
        this.doors = doors;
    }

    /// Who belongs to the school, and in which intakes.
    public record PeoplePage(
            Frame frame,
            PeopleWords words,
            SharedWords shared,
            List<Member> members,
            List<IntakeRow> intakes,
            List<String> roles,
            boolean mayManage,
            Returned form) {
        public PeoplePage {
            members = List.copyOf(members);
            intakes = List.copyOf(intakes);
            roles = List.copyOf(roles);
        }

        public String roles(Member member) {
            return String.join(", ", member.roles().stream().map(Role::word).sorted().toList());
        }
    }

    /// An intake, who is in it, and which students are not.
    public record IntakeRow(
            Intake intake, String begins, List<Person> students, List<Person> others) {}

    void addTo(Routes routes) {
        routes.get(
                "/{school}/people",
                Action.READ_PEOPLE,
                (ctx, actor) -> show(ctx, actor, Returned.NOTHING));
        routes.post("/{school}/people", Action.MANAGE_PEOPLE, this::enter);
        routes.post("/{school}/intakes", Action.MANAGE_PEOPLE, this::beginIntake);
        routes.post("/{school}/intakes/{intake}/members", Action.MANAGE_PEOPLE, this::join);
    }

    private void show(Context ctx, Actor actor, Returned form) {
        String language = actor.school().language();
        PeopleWords words = PeopleWords.in(language);
        var page =
                new PeoplePage(
                        Frame.of(ctx, actor, words.people()),
                        words,
                        SharedWords.in(language),
                        doors.people().listMembers(actor),
                        intakes(actor.school()),
                        Arrays.stream(Role.values()).map(Role::word).toList(),
                        actor.may(Action.MANAGE_PEOPLE),
                        form);
        ctx.render("staff/people.jte", Map.of("page", page));
    }

    private List<IntakeRow> intakes(School school) {
        List<Person> all = doors.people().listStudents(school, Optional.empty());
        return doors.people().listIntakes(school).stream()
                .map(intake -> intake(school, intake, all))
                .toList();
    }

    private IntakeRow intake(School school, Intake intake, List<Person> all) {
        List<Person> in = doors.people().listStudents(school, Optional.of(intake.id()));
        List<Person> others = all.stream().filter(person -> !in.contains(person)).toList();
        return new IntakeRow(intake, Times.of(school).day(intake.startsOn()), in, others);
    }

    private void enter(Context ctx, Actor actor) {
        Form form =
                Form.of(
                        ctx,
                        "givenName",
                        "familyName",
                        "email",
                        "password",
                        "role",
                        "number",
                        "issuer",
                        "validUntil");
        change(ctx, actor, form, () -> enter(actor, form));
    }

    private void enter(Actor actor, Form form) {
        Role role =
                Role.findByWord(form.text("role"))
                        .orElseThrow(
                                () -> new Refusal.Invalid("role", "Choose a role from the list."));
        var person =
                new NewPerson(
                        form.text("givenName"),
                        form.text("familyName"),
                        form.text("email"),
                        form.text("password"));
        boolean authorised = !form.text("number").isBlank();
        Optional<NewAuthorisation> authorisation =
                authorised ? Optional.of(authorisation(actor, form)) : Optional.empty();
        SubjectId subject =
                doors.people().enter(actor.school(), Optional.of(actor), person, Set.of(role));
        authorisation.ifPresent(
                a -> doors.people().authorise(actor.school(), Optional.of(actor), subject, a));
    }

    private NewAuthorisation authorisation(Actor actor, Form form) {
        return new NewAuthorisation(
                form.text("number"),
                List.of("foot"),
                form.text("issuer"),
                actor.school().dayOf(doors.foundation().now()),
                form.day("validUntil"));
    }

    private void beginIntake(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "name", "startsOn");
        change(
                ctx,
                actor,
                form,
                () ->
                        doors.people()
                                .beginIntake(
                                        actor.school(),
                                        Optional.of(actor),
                                        form.text("name"),
                                        form.day("startsOn")));
    }

    private void join(Context ctx, Actor actor) {
        UUID intake = doors.people().getIntake(actor.school(), Form.pathId(ctx, "intake")).id();
        Form form = Form.of(ctx, "student");
        change(ctx, actor, form, () -> join(actor, intake, form.ids("student")));
    }

    private void join(Actor actor, UUID intake, List<UUID> students) {
        if (students.isEmpty()) {
            throw new Refusal.Invalid("student", "Tick at least one student.");
        }
        doors.people()
                .join(
                        actor.school(),
                        Optional.of(actor),
                        intake,
                        students.stream().map(SubjectId::new).toList());
    }

    /// Carries a change out and shows the people again.
    private void change(Context ctx, Actor actor, Form form, Runnable change) {
        String people = "/" + actor.school().code() + "/people";
        Returned.change(ctx, people, form.typed(), change, r -> show(ctx, actor, r));
    }
}
