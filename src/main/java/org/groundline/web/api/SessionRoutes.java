package org.groundline.web.api;

import io.javalin.http.Context;

import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.School;
import org.groundline.web.Doors;
import org.groundline.web.request.Guard;

/// Logging in and out, and one's own account.
final class SessionRoutes {
    private final Doors doors;
    private final Guard guard;

    SessionRoutes(Doors doors, Guard guard) {
        this.doors = doors;
        this.guard = guard;
    }

    record Credentials(String email, String password) {}

    /// @param password the present one
    record PasswordChange(String password, String newPassword) {}

    /// @param language BCP 47
    record LanguageChoice(String language) {}

    void addTo(ApiRoutes routes) {
        routes.openPost("/sessions", this::logIn);
        routes.delete("/sessions/current", Action.USE_ACCOUNT, this::logOut);
        routes.get("/me", Action.USE_ACCOUNT, this::me);
        routes.put("/me/password", Action.USE_ACCOUNT, PasswordChange.class, this::changePassword);
        routes.put(
                "/me/question-language",
                Action.USE_ACCOUNT,
                LanguageChoice.class,
                this::chooseLanguage);
    }

    private void logIn(Context ctx) {
        School school = guard.school(ctx);
        var given = BodyReader.read(ctx, Credentials.class);
        String token = doors.logins().logIn(school, given.email(), given.password());
        Json.answer(ctx, 201, SessionView.of(Guard.bearer(school, token), actor(school, token)));
    }

    private Actor actor(School school, String token) {
        return doors.logins()
                .findActor(school, token)
                .orElseThrow(() -> new Refusal.Unknown("This log-in has run out already."));
    }

    private void logOut(Context ctx, Actor actor) {
        doors.logins().logOut(actor);
        guard.forget(ctx, actor.school());
        ctx.status(204);
    }

    private void me(Context ctx, Actor actor) {
        var person = doors.people().getPerson(actor.school(), actor.subject());
        var intakes = doors.people().listIntakesOf(actor.school(), actor.subject());
        var languages =
                new MeView.LanguagesView(
                        doors.languages().languageOf(actor), doors.languages().listLanguages());
        Json.answer(ctx, 200, MeView.of(actor, person, intakes, languages));
    }

    private void chooseLanguage(Context ctx, Actor actor, LanguageChoice choice) {
        doors.languages().choose(actor, choice.language());
        ctx.status(204);
    }

    private void changePassword(Context ctx, Actor actor, PasswordChange change) {
        doors.logins().changePassword(actor, change.password(), change.newPassword());
        ctx.status(204);
    }
}
