package org.groundline.web.staff;

import io.javalin.http.Context;

import org.groundline.bank.Shown;
import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.record.Attempt;
import org.groundline.record.Debriefs.Outcome;
import org.groundline.record.ModuleRecord;
import org.groundline.record.ModuleState;
import org.groundline.record.SignOff;
import org.groundline.record.StudentRecord;
import org.groundline.record.TalkItem;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Routes;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/// A student's record as staff see it: what is met and what is missing, with the evidence, and what
/// can be entered.
public final class RecordPages {
    private final Doors doors;

    RecordPages(Doors doors) {
        this.doors = doors;
    }

    /// @param typed what was typed into a form that was refused, by field; never a password
    /// @param message why it was refused; empty otherwise
    /// @param names the people who appear in the record, by subject
    /// @param reasons of reversals, by sign-off
    /// @param beliefs what is wrong about each belief, by its id
    public record RecordPage(
            Frame frame,
            StaffWords words,
            Dates dates,
            StudentRecord record,
            List<Intake> intakes,
            Map<UUID, String> names,
            Map<UUID, String> reasons,
            Map<String, String> beliefs,
            boolean maySign,
            boolean mayEnter,
            Map<String, String> typed,
            String message) {
        public String address() {
            return frame.root() + "/students/" + record.student().subject().value();
        }

        public StateWords state(ModuleRecord module) {
            return StateWords.of(module.state(), words, dates);
        }

        public boolean ready(ModuleRecord module) {
            return module.state() instanceof ModuleState.Ready;
        }

        /// What was given to an item that is to be talked through, with the idea behind it where
        /// one is known.
        public String given(TalkItem item) {
            String given =
                    item.given().isEmpty()
                            ? words.unanswered()
                            : words.given() + ": " + givenText(item);
            return item.belief().isEmpty()
                    ? given
                    : given + ". " + beliefs.getOrDefault(item.belief(), item.belief());
        }

        private static String givenText(TalkItem item) {
            return switch (item.shown()) {
                case Shown.Choice choice ->
                        item.given() + ", " + choice.options().get(item.given().charAt(0) - 'A');
                case Shown.Number number -> item.given();
            };
        }

        public String attempt(Attempt attempt) {
            return words.attempt(
                    attempt.hundredths(), attempt.possible(), dates.day(attempt.handedInAt()));
        }

        /// A person's name; what is left where it was erased.
        public String name(SubjectId subject) {
            return names.getOrDefault(subject.value(), words.erased());
        }

        public String reason(SignOff signOff) {
            return reasons.getOrDefault(signOff.id(), words.erased());
        }

        public String typed(String field) {
            return typed.getOrDefault(field, "");
        }
    }

    void addTo(Routes routes) {
        String student = "/{school}/students/{subject}";
        routes.get(student, Action.READ_STUDENT, (ctx, actor) -> show(ctx, actor, Map.of(), ""));
        routes.post(student + "/debriefs", Action.ENTER_DEBRIEF, this::debrief);
        routes.post(student + "/demonstrations", Action.ENTER_DEMONSTRATION, this::demonstrate);
        routes.post(student + "/sign-offs", Action.SIGN_OFF, this::signOff);
        routes.post(student + "/sign-offs/{signOff}/reversal", Action.REVERSE, this::reverse);
    }

    private static SubjectId subject(Context ctx) {
        return new SubjectId(Form.pathId(ctx, "subject"));
    }

    private void show(Context ctx, Actor actor, Map<String, String> typed, String message) {
        StudentRecord record = doors.records().getRecord(actor, subject(ctx));
        StaffWords words = StaffWords.in(actor.school().language());
        boolean own = record.student().subject().equals(actor.subject());
        var page =
                new RecordPage(
                        Frame.of(ctx, actor, record.student().name()),
                        words,
                        new Dates(actor.school()),
                        record,
                        doors.people().listIntakesOf(actor.school(), record.student().subject()),
                        doors.people().namesIn(actor.school()),
                        reasons(actor, record),
                        beliefs(record),
                        actor.may(Action.SIGN_OFF) && !own,
                        actor.may(Action.ENTER_DEBRIEF) && !own,
                        typed,
                        message);
        ctx.render("staff/record.jte", Map.of("page", page));
    }

    private Map<UUID, String> reasons(Actor actor, StudentRecord record) {
        Map<UUID, String> reasons = new HashMap<>();
        for (ModuleRecord module : record.modules()) {
            for (SignOff signOff : module.signOffs()) {
                signOff.reversal()
                        .flatMap(reversal -> doors.signOffs().findReason(actor, reversal))
                        .ifPresent(reason -> reasons.put(signOff.id(), reason));
            }
        }
        return reasons;
    }

    private Map<String, String> beliefs(StudentRecord record) {
        Map<String, String> beliefs = new HashMap<>();
        record.modules().stream()
                .flatMap(module -> module.toTalkThrough().stream())
                .map(TalkItem::belief)
                .forEach(
                        id ->
                                doors.bank()
                                        .findMisconception(id)
                                        .ifPresent(m -> beliefs.put(id, m.wrong())));
        return beliefs;
    }

    private void debrief(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "item", "outcome", "note");
        enter(
                ctx,
                actor,
                Map.of("note " + form.text("item"), form.text("note")),
                () ->
                        doors.debriefs()
                                .enter(
                                        actor,
                                        subject(ctx),
                                        form.id("item"),
                                        Outcome.ofWord(form.text("outcome")),
                                        form.text("note")));
    }

    private void demonstrate(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "demonstration", "note");
        enter(
                ctx,
                actor,
                Map.of(),
                () ->
                        doors.demonstrations()
                                .observe(
                                        actor,
                                        subject(ctx),
                                        form.text("demonstration"),
                                        form.text("note")));
    }

    private void signOff(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "module", "password");
        enter(
                ctx,
                actor,
                Map.of(),
                () ->
                        doors.signOffs()
                                .signOff(
                                        actor,
                                        subject(ctx),
                                        form.text("module"),
                                        form.text("password")));
    }

    private void reverse(Context ctx, Actor actor) {
        Form form = Form.of(ctx, "reason", "password");
        UUID signOff = Form.pathId(ctx, "signOff");
        enter(
                ctx,
                actor,
                Map.of("reason " + signOff, form.text("reason")),
                () ->
                        doors.signOffs()
                                .reverse(
                                        actor,
                                        subject(ctx),
                                        signOff,
                                        form.text("reason"),
                                        form.text("password")));
    }

    /// Carries an entry out and shows the record again; where it is refused, with the reason and
    /// what was typed.
    private void enter(Context ctx, Actor actor, Map<String, String> typed, Runnable entry) {
        try {
            entry.run();
            ctx.redirect("/" + actor.school().code() + "/students/" + subject(ctx).value());
        } catch (Refusal.Invalid | Refusal.Conflict | Refusal.TooMany e) {
            ctx.status(e instanceof Refusal.Conflict ? 409 : 400);
            show(ctx, actor, typed, String.valueOf(e.getMessage()));
        }
    }
}
