package org.groundline.web.api;

import static org.groundline.web.request.Form.pathId;
import static org.groundline.web.request.Form.queryId;

import io.javalin.http.Context;

import org.groundline.database.SubjectId;
import org.groundline.record.Debriefs.Outcome;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;
import org.groundline.web.request.Guard;

import java.util.Optional;
import java.util.UUID;

/// What staff see of students and enter about them. Each entry is answered with the record as it is
/// then and with the record's tag, on which the next entry can be based.
final class StudentRoutes {
    private final Doors doors;
    private final Records records;

    StudentRoutes(Doors doors) {
        this.doors = doors;
        this.records = new Records(doors);
    }

    record DebriefBody(UUID item, String outcome, Optional<String> note) {}

    record DemonstrationBody(String demonstration, Optional<String> note) {}

    record SignOffBody(String module, String password) {}

    record ReversalBody(String reason, String password) {}

    void addTo(ApiRoutes routes) {
        String student = "/students/{subject}";
        routes.get("/board", Action.READ_BOARD, this::board, "intake");
        routes.get(student, Action.READ_STUDENT, this::show);
        routes.post(student + "/debriefs", Action.ENTER_DEBRIEF, DebriefBody.class, this::debrief);
        routes.post(
                student + "/demonstrations",
                Action.ENTER_DEMONSTRATION,
                DemonstrationBody.class,
                this::observe);
        routes.post(student + "/sign-offs", Action.SIGN_OFF, SignOffBody.class, this::signOff);
        routes.post(
                student + "/sign-offs/{signOff}/reversal",
                Action.REVERSE,
                ReversalBody.class,
                this::reverse);
    }

    private void board(Context ctx, Actor actor) {
        var board = doors.records().listBoard(actor, queryId(ctx, "intake"));
        Json.answer(ctx, 200, BoardView.of(board));
    }

    private void show(Context ctx, Actor actor) {
        byte[] record = records.of(actor, subject(ctx));
        Tag.of(record).answer(ctx, Json.TYPE, record);
    }

    private void debrief(Context ctx, Actor actor, DebriefBody body) {
        tag(ctx, actor).requireMatchIfSent(ctx);
        var outcome = Outcome.ofWord(body.outcome());
        doors.debriefs().enter(actor, subject(ctx), body.item(), outcome, body.note().orElse(""));
        entered(ctx, actor);
    }

    private void observe(Context ctx, Actor actor, DemonstrationBody body) {
        tag(ctx, actor).requireMatchIfSent(ctx);
        doors.demonstrations()
                .observe(actor, subject(ctx), body.demonstration(), body.note().orElse(""));
        entered(ctx, actor);
    }

    private void signOff(Context ctx, Actor actor, SignOffBody body) {
        tag(ctx, actor).requireMatch(ctx);
        doors.signOffs().signOff(actor, subject(ctx), body.module(), body.password());
        entered(ctx, actor);
    }

    private void reverse(Context ctx, Actor actor, ReversalBody body) {
        tag(ctx, actor).requireMatch(ctx);
        doors.signOffs()
                .reverse(
                        actor,
                        subject(ctx),
                        pathId(ctx, "signOff"),
                        body.reason(),
                        body.password());
        entered(ctx, actor);
    }

    private Tag tag(Context ctx, Actor actor) {
        return Tag.of(records.of(actor, subject(ctx)));
    }

    private void entered(Context ctx, Actor actor) {
        byte[] record = records.of(actor, subject(ctx));
        ctx.header("ETag", Tag.of(record).text());
        ctx.header(
                "Content-Location",
                "%s/schools/%s/students/%s"
                        .formatted(Guard.API, actor.school().code(), subject(ctx).value()));
        Json.answer(ctx, 201, record);
    }

    private static SubjectId subject(Context ctx) {
        return new SubjectId(pathId(ctx, "subject"));
    }
}
