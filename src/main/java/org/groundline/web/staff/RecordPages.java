package org.groundline.web.staff;

import io.javalin.http.Context;

import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.reading.Reading;
import org.groundline.record.Debriefs.Outcome;
import org.groundline.record.ModuleRecord;
import org.groundline.record.SignOff;
import org.groundline.record.StudentRecord;
import org.groundline.record.TalkItem;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;
import org.groundline.web.brief.BriefLink;
import org.groundline.web.brief.BriefWords;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Returned;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Times;
import org.groundline.web.staff.words.RecordWords;
import org.groundline.web.staff.words.SharedWords;

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

    void addTo(Routes routes) {
        String student = "/{school}/students/{subject}";
        routes.get(
                student, Action.READ_STUDENT, (ctx, actor) -> show(ctx, actor, Returned.NOTHING));
        routes.post(student + "/debriefs", Action.ENTER_DEBRIEF, this::debrief);
        routes.post(student + "/demonstrations", Action.ENTER_DEMONSTRATION, this::demonstrate);
        routes.post(student + "/sign-offs", Action.SIGN_OFF, this::signOff);
        routes.post(student + "/sign-offs/{signOff}/reversal", Action.REVERSE, this::reverse);
    }

    private static SubjectId subject(Context ctx) {
        return new SubjectId(Form.pathId(ctx, "subject"));
    }

    private void show(Context ctx, Actor actor, Returned form) {
        StudentRecord record = doors.records().getRecord(actor, subject(ctx));
        String language = actor.school().language();
        boolean own = record.student().subject().equals(actor.subject());
        var page =
                new RecordPage(
                        Frame.of(ctx, actor, record.student().name()),
                        RecordWords.in(language),
                        SharedWords.in(language),
                        Times.of(actor.school()),
                        record,
                        doors.people().listIntakesOf(actor.school(), record.student().subject()),
                        doors.people().namesIn(actor.school()),
                        reasons(actor, record),
                        beliefs(record),
                        briefs(actor, record, BriefWords.in(language)),
                        BriefWords.in(language),
                        actor.may(Action.SIGN_OFF) && !own,
                        actor.may(Action.ENTER_DEBRIEF) && !own,
                        form);
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

    private Map<String, List<BriefLink>> briefs(
            Actor actor, StudentRecord record, BriefWords words) {
        Map<String, Reading> readings = doors.readings().listOf(actor, record.student().subject());
        String root = "/" + actor.school().code();
        Times times = Times.of(actor.school());
        Map<String, List<BriefLink>> briefs = new HashMap<>();
        for (ModuleRecord module : record.modules()) {
            briefs.put(
                    module.module().id(),
                    module.module().topics().stream()
                            .map(topic -> BriefLink.to(topic, readings, root, words, times))
                            .filter(BriefLink::isThere)
                            .toList());
        }
        return briefs;
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
        Form form = Form.of(ctx, "demonstration", "observed", "note");
        enter(ctx, actor, Map.of(), () -> observe(ctx, actor, form));
    }

    private void observe(Context ctx, Actor actor, Form form) {
        if (!form.text("observed").equals("today")) {
            throw new Refusal.Invalid(
                    "observed", "Tick that you observed the demonstration today, then record it.");
        }
        doors.demonstrations()
                .observe(actor, subject(ctx), form.text("demonstration"), form.text("note"));
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

    private void enter(Context ctx, Actor actor, Map<String, String> typed, Runnable entry) {
        String record = "/" + actor.school().code() + "/students/" + subject(ctx).value();
        Returned.change(ctx, record, typed, entry, form -> show(ctx, actor, form));
    }
}
