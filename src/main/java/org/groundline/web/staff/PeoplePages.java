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
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Routes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;

/// Who belongs to the school, and in which intake.
public final class PeoplePages {
    private final Doors doors;

    PeoplePages(Doors doors) {
        this.doors = doors;
    }

    /// @param typed what was typed into a form that was refused, by field; never a password
    public record PeoplePage(
            Frame frame,
            StaffWords words,
            List<Member> members,
            List<IntakeRow> intakes,
            List<Person> students,
            List<String> roles,
            boolean mayManage,
            Map<String, String> typed,
            String message) {
        /// An intake and who is in it.
        public record IntakeRow(Intake intake, String begins, List<Person> students) {}

        public String typed(String field) {
            return typed.getOrDefault(field, "");
        }

        public String roles(Member member) {
            return String.join(", ", member.roles().stream().map(Role::word).sorted().toList());
        }
    }

    void addTo(Routes routes) {
        routes.get(
                "/{school}/people",
                Action.READ_PEOPLE,
                (ctx, actor) -> show(ctx, actor, Map.of(), ""));
        routes.post("/{school}/people", Action.MANAGE_PEOPLE, this::enter);
        routes.post("/{school}/intakes", Action.MANAGE_PEOPLE, this::beginIntake);
        routes.post("/{school}/intakes/{intake}/members", Action.MANAGE_PEOPLE, this::join);
    }

    private void show(Context ctx, Actor actor, Map<String, String> typed, String message) {
        StaffWords words = StaffWords.in(actor.school().language());
        var dates = new Dates(actor.school());
        List<PeoplePage.IntakeRow> intakes =
                doors.people().listIntakes(actor.school()).stream()
                        .map(
                                i ->
                                        new PeoplePage.IntakeRow(
                                                i,
                                                dates.day(i.startsOn()),
                                                doors.people()
                                                        .listStudents(
                                                                actor.school(),
                                                                Optional.of(i.id()))))
                        .toList();
        var page =
                new PeoplePage(
                        Frame.of(ctx, actor, words.people()),
                        words,
                        doors.people().listMembers(actor),
                        intakes,
                        doors.people().listStudents(actor.school(), Optional.empty()),
                        java.util.Arrays.stream(Role.values()).map(Role::word).toList(),
                        actor.may(Action.MANAGE_PEOPLE),
                        typed,
                        message);
        ctx.render("staff/people.jte", Map.of("page", page));
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
        change(
                ctx,
                actor,
                form,
                List.of(
                        "givenName",
                        "familyName",
                        "email",
                        "role",
                        "number",
                        "issuer",
                        "validUntil"),
                f -> enter(actor, f));
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
                List.of("name", "startsOn"),
                f ->
                        doors.people()
                                .beginIntake(
                                        actor.school(),
                                        Optional.of(actor),
                                        f.text("name"),
                                        f.day("startsOn")));
    }

    private void join(Context ctx, Actor actor) {
        UUID intake = doors.people().getIntake(actor.school(), Form.pathId(ctx, "intake")).id();
        Form form = Form.of(ctx, "student");
        change(ctx, actor, form, List.of(), f -> join(actor, intake, f.id("student")));
    }

    private void join(Actor actor, UUID intake, UUID student) {
        Person person = doors.people().getPerson(actor.school(), new SubjectId(student));
        doors.people().join(actor.school(), Optional.of(actor), intake, person.subject());
    }

    /// Carries a change out and shows the people again; where it is refused, with the reason and
    /// what was typed.
    private void change(
            Context ctx, Actor actor, Form form, List<String> kept, Consumer<Form> change) {
        try {
            change.accept(form);
            ctx.redirect("/" + actor.school().code() + "/people");
        } catch (Refusal.Invalid | Refusal.Conflict e) {
            ctx.status(e instanceof Refusal.Conflict ? 409 : 400);
            Map<String, String> typed = new java.util.HashMap<>();
            kept.forEach(field -> typed.put(field, form.text(field)));
            show(ctx, actor, typed, String.valueOf(e.getMessage()));
        }
    }
}
