package org.groundline.web.api;

import static org.groundline.web.request.Form.pathId;

import io.javalin.http.Context;

import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.school.People.NewPerson;
import org.groundline.school.Person;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.web.Doors;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/// The people of a school and its intakes.
final class PeopleRoutes {
    private final Doors doors;

    PeopleRoutes(Doors doors) {
        this.doors = doors;
    }

    record PersonBody(
            String givenName,
            String familyName,
            String email,
            String password,
            List<String> roles) {
        NewPerson wish() {
            return new NewPerson(givenName, familyName, email, password);
        }

        Set<Role> wantedRoles() {
            return roles.stream().map(PersonBody::role).collect(Collectors.toUnmodifiableSet());
        }

        private static Role role(String word) {
            return Role.findByWord(word)
                    .orElseThrow(
                            () -> new Refusal.Invalid("roles", "One of these is no role here."));
        }
    }

    record IntakeBody(String name, LocalDate startsOn) {}

    record IntakesView(List<IntakeView> intakes) {}

    record PeopleView(List<PersonView> people, List<IntakeView> intakes) {}

    void addTo(ApiRoutes routes) {
        routes.get("/people", Action.READ_PEOPLE, this::people);
        routes.post("/people", Action.MANAGE_PEOPLE, PersonBody.class, this::enter);
        routes.post(
                "/people/{subject}/authorisations",
                Action.MANAGE_PEOPLE,
                AuthorisationBody.class,
                this::authorise);
        routes.get("/intakes", Action.READ_OPENING, this::intakes);
        routes.post("/intakes", Action.MANAGE_PEOPLE, IntakeBody.class, this::begin);
        routes.put("/intakes/{intake}/members/{subject}", Action.MANAGE_PEOPLE, this::join);
    }

    private void people(Context ctx, Actor actor) {
        var people =
                doors.people().listMembers(actor).stream()
                        .map(m -> PersonView.of(m.person(), m.roles()))
                        .toList();
        Json.answer(ctx, 200, new PeopleView(people, listIntakes(actor.school())));
    }

    private void enter(Context ctx, Actor actor, PersonBody body) {
        School school = actor.school();
        SubjectId subject =
                doors.people().enter(school, Optional.of(actor), body.wish(), body.wantedRoles());
        Person person = doors.people().getPerson(school, subject);
        Json.answer(ctx, 201, PersonView.of(person, body.wantedRoles()));
    }

    private void authorise(Context ctx, Actor actor, AuthorisationBody body) {
        var subject = new SubjectId(pathId(ctx, "subject"));
        var authorisation =
                doors.people().authorise(actor.school(), Optional.of(actor), subject, body.wish());
        Json.answer(ctx, 201, AuthorisationView.of(authorisation));
    }

    private void intakes(Context ctx, Actor actor) {
        Json.answer(ctx, 200, new IntakesView(listIntakes(actor.school())));
    }

    private List<IntakeView> listIntakes(School school) {
        return doors.people().listIntakes(school).stream().map(IntakeView::of).toList();
    }

    private void begin(Context ctx, Actor actor, IntakeBody body) {
        Intake intake =
                doors.people()
                        .beginIntake(
                                actor.school(), Optional.of(actor), body.name(), body.startsOn());
        Json.answer(ctx, 201, IntakeView.of(intake));
    }

    private void join(Context ctx, Actor actor) {
        var subject = new SubjectId(pathId(ctx, "subject"));
        doors.people().join(actor.school(), Optional.of(actor), pathId(ctx, "intake"), subject);
        ctx.status(204);
    }
}
