package org.groundline.web.account;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;

import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.People.NewPerson;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.school.Schools.NewSchool;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Guard;
import org.groundline.web.request.Returned;
import org.groundline.web.request.Routes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// Pages of coming in and going out.
public final class AccountPages {
    private final Doors doors;
    private final Guard guard;

    public AccountPages(Doors doors, Guard guard) {
        this.doors = doors;
        this.guard = guard;
    }

    /// The page to log in on.
    ///
    /// @param next where to go afterwards; empty for the first page
    /// @param message what went wrong; empty at first
    public record LoginPage(
            Frame frame, AccountWords words, String next, String email, String message) {}

    /// The page that asks which school.
    public record SchoolsPage(Frame frame, AccountWords words, List<School> schools) {}

    /// The page of one's own account.
    ///
    /// @param language in which its person is asked, a BCP 47 tag
    /// @param languages to choose from; one alone is no choice
    /// @param notice what came of the last change
    public record AccountPage(
            Frame frame,
            AccountWords words,
            String roles,
            String language,
            List<String> languages,
            Notice notice) {}

    /// What came of a change.
    ///
    /// @param message empty where nothing was changed
    /// @param about the form that it belongs to
    public record Notice(About about, String message, boolean done) {
        static final Notice NONE = new Notice(About.PASSWORD, "", false);

        /// Whether there is something to say at this form.
        public boolean at(About form) {
            return about == form && !message.isEmpty();
        }
    }

    /// The forms of the page.
    public enum About {
        PASSWORD,
        LANGUAGE
    }

    /// The page that sets up the first school.
    public record SetUpPage(Frame frame, AccountWords words, String token, Returned form) {}

    public void addTo(Routes routes) {
        routes.open(HandlerType.GET, "/", this::schools);
        routes.open(HandlerType.GET, "/set-up/{token}", this::showSetUp);
        routes.open(HandlerType.POST, "/set-up/{token}", this::setUp);
        routes.open(HandlerType.GET, "/{school}/login", this::showLogin);
        routes.open(HandlerType.POST, "/{school}/login", this::logIn);
        routes.get("/{school}", Action.USE_ACCOUNT, this::first);
        routes.post("/{school}/logout", Action.USE_ACCOUNT, this::logOut);
        routes.get(
                "/{school}/account",
                Action.USE_ACCOUNT,
                (ctx, actor) -> account(ctx, actor, Notice.NONE));
        routes.post("/{school}/account/password", Action.USE_ACCOUNT, this::changePassword);
        routes.post(
                "/{school}/account/question-language", Action.USE_ACCOUNT, this::chooseLanguage);
    }

    private void schools(Context ctx) {
        List<School> schools = doors.schools().listSchools();
        if (schools.size() == 1) {
            ctx.redirect("/" + schools.get(0).code());
            return;
        }
        AccountWords words = AccountWords.in("en");
        Frame frame = Frame.open(ctx, Optional.empty(), words.whichSchool());
        ctx.render("account/schools.jte", Map.of("page", new SchoolsPage(frame, words, schools)));
    }

    private void first(Context ctx, Actor actor) {
        String root = "/" + actor.school().code();
        String page =
                actor.may(Action.READ_BOARD)
                        ? "/board"
                        : actor.mayAtAll(Action.SIT)
                                ? "/course"
                                : actor.may(Action.READ_OPENING) ? "/tests" : "/account";
        ctx.redirect(root + page);
    }

    private void showLogin(Context ctx) {
        String next = Optional.ofNullable(ctx.queryParam("next")).orElse("");
        login(ctx, next, "", "");
    }

    private void login(Context ctx, String next, String email, String message) {
        School school = guard.school(ctx);
        AccountWords words = AccountWords.in(school.language());
        Frame frame = Frame.open(ctx, Optional.of(school), words.logIn());
        ctx.render(
                "account/login.jte",
                Map.of("page", new LoginPage(frame, words, next, email, message)));
    }

    private void logIn(Context ctx) {
        School school = guard.school(ctx);
        Form form = Form.of(ctx, "email", "password", "next");
        try {
            String token = doors.logins().logIn(school, form.text("email"), form.text("password"));
            guard.remember(ctx, school, token);
            ctx.redirect(inside(school, form.text("next")));
        } catch (Refusal.Unknown e) {
            ctx.status(401);
            login(ctx, form.text("next"), form.text("email"), String.valueOf(e.getMessage()));
        }
    }

    /// Only addresses of the same school are gone to after a log-in.
    private static String inside(School school, String next) {
        String root = "/" + school.code();
        return next.startsWith(root + "/") && next.matches("[/a-zA-Z0-9-]+") ? next : root;
    }

    private void logOut(Context ctx, Actor actor) {
        doors.logins().logOut(actor);
        guard.forget(ctx, actor.school());
        ctx.redirect("/" + actor.school().code() + "/login");
    }

    private void account(Context ctx, Actor actor, Notice notice) {
        AccountWords words = AccountWords.in(actor.school().language());
        String roles = String.join(", ", actor.roles().stream().map(Role::word).sorted().toList());
        Frame frame = Frame.of(ctx, actor, words.yourAccount());
        var page =
                new AccountPage(
                        frame,
                        words,
                        roles,
                        doors.languages().languageOf(actor),
                        doors.languages().listLanguages(),
                        notice);
        ctx.render("account/account.jte", Map.of("page", page));
    }

    private void changePassword(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "old", "wanted");
        try {
            doors.logins().changePassword(actor, form.text("old"), form.text("wanted"));
            String done = AccountWords.in(actor.school().language()).passwordChanged();
            account(ctx, actor, new Notice(About.PASSWORD, done, true));
        } catch (Refusal.Invalid e) {
            ctx.status(400);
            account(ctx, actor, new Notice(About.PASSWORD, String.valueOf(e.getMessage()), false));
        }
    }

    private void chooseLanguage(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "language");
        try {
            doors.languages().choose(actor, form.text("language"));
            String done = AccountWords.in(actor.school().language()).languageChosen();
            account(ctx, actor, new Notice(About.LANGUAGE, done, true));
        } catch (Refusal.Invalid e) {
            ctx.status(400);
            account(ctx, actor, new Notice(About.LANGUAGE, String.valueOf(e.getMessage()), false));
        }
    }

    private void showSetUp(Context ctx) {
        doors.schools().requireSetUpToken(ctx.pathParam("token"));
        setUpForm(ctx, Returned.NOTHING);
    }

    private void setUpForm(Context ctx, Returned form) {
        AccountWords words = AccountWords.in("en");
        Frame frame = Frame.open(ctx, Optional.empty(), words.setUp());
        var page = new SetUpPage(frame, words, ctx.pathParam("token"), form);
        ctx.render("account/set-up.jte", Map.of("page", page));
    }

    private void setUp(Context ctx) {
        String token = ctx.pathParam("token");
        doors.schools().requireSetUpToken(token);
        Form form =
                Form.of(
                        ctx,
                        "code",
                        "name",
                        "zone",
                        "givenName",
                        "familyName",
                        "email",
                        "password");
        String login = "/" + form.text("code") + "/login";
        Returned.change(
                ctx,
                login,
                form.typed(),
                () -> setUp(token, form),
                returned -> setUpForm(ctx, returned));
    }

    private void setUp(String token, Form form) {
        var chief =
                new NewPerson(
                        form.text("givenName"),
                        form.text("familyName"),
                        form.text("email"),
                        form.text("password"));
        doors.people().requireAcceptable(chief);
        School school =
                doors.schools()
                        .create(
                                new NewSchool(
                                        form.text("code"),
                                        form.text("name"),
                                        form.text("zone"),
                                        "en"));
        doors.schools().useSetUpToken(token);
        doors.people()
                .enter(
                        school,
                        Optional.empty(),
                        chief,
                        Set.of(Role.CHIEF_INSTRUCTOR, Role.INSTRUCTOR));
    }
}
