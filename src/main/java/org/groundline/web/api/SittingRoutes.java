package org.groundline.web.api;

import static org.groundline.web.request.Form.pathId;

import io.javalin.http.Context;

import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;

import java.util.UUID;

/// Sitting a test that counts.
final class SittingRoutes {
    private final Doors doors;

    SittingRoutes(Doors doors) {
        this.doors = doors;
    }

    void addTo(ApiRoutes routes) {
        routes.get("/sittings/{sitting}", Action.SIT, this::show);
        routes.post("/sittings/{sitting}/answers", Action.SIT, AnswerBody.class, this::answer);
        routes.put(
                "/sittings/{sitting}/flags/{item}",
                Action.SIT,
                (ctx, actor) -> flag(ctx, actor, true));
        routes.delete(
                "/sittings/{sitting}/flags/{item}",
                Action.SIT,
                (ctx, actor) -> flag(ctx, actor, false));
        routes.post("/sittings/{sitting}/hand-in", Action.SIT, this::handIn);
        routes.get("/sittings/{sitting}/result", Action.READ_RESULT, this::result);
    }

    private void show(Context ctx, Actor actor) {
        var open = doors.sittings().open(actor, pathId(ctx, "sitting"));
        Json.answer(ctx, 200, SittingView.of(open, doors.foundation().now()));
    }

    private void answer(Context ctx, Actor actor, AnswerBody body) {
        var given = body.given(IdempotencyKey.of(ctx), doors.foundation().now());
        var receipt = doors.sittings().answer(actor, pathId(ctx, "sitting"), given);
        Json.answer(ctx, 200, ReceiptView.of(receipt));
    }

    private void flag(Context ctx, Actor actor, boolean flagged) {
        doors.sittings().flag(actor, pathId(ctx, "sitting"), pathId(ctx, "item"), flagged);
        ctx.status(204);
    }

    private void handIn(Context ctx, Actor actor) {
        UUID sitting = pathId(ctx, "sitting");
        doors.sittings().handIn(actor, sitting);
        Json.answer(ctx, 200, BegunView.of(doors.sittings().getSitting(actor, sitting)));
    }

    private void result(Context ctx, Actor actor) {
        var result = doors.sittings().getResult(actor, pathId(ctx, "sitting"));
        Json.answer(ctx, 200, ResultView.of(result));
    }
}
