package org.groundline.web.api;

import static org.groundline.web.request.Form.pathId;

import io.javalin.http.Context;

import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;

import java.util.UUID;

/// Practising a topic, an item at a time.
final class PracticeRoutes {
    private final Doors doors;

    PracticeRoutes(Doors doors) {
        this.doors = doors;
    }

    record TopicChoice(String topic) {}

    /// The item to be answered next.
    ///
    /// @param seat to be sent with the answer
    record NextView(UUID sitting, int seat, ItemView item) {}

    void addTo(ApiRoutes routes) {
        routes.post("/practices", Action.PRACTISE, TopicChoice.class, this::next);
        routes.post(
                "/practices/{sitting}/answers", Action.PRACTISE, AnswerBody.class, this::answer);
        routes.get("/practices/{sitting}/items/{item}", Action.PRACTISE, this::explain);
    }

    private void next(Context ctx, Actor actor, TopicChoice choice) {
        var next = doors.practices().next(actor, choice.topic());
        Json.answer(ctx, 200, new NextView(next.sitting(), next.seat(), ItemView.of(next.item())));
    }

    private void answer(Context ctx, Actor actor, AnswerBody body) {
        var given = body.given(IdempotencyKey.of(ctx), doors.foundation().now());
        var explained = doors.practices().answer(actor, pathId(ctx, "sitting"), given);
        Json.answer(ctx, 200, ExplainedView.of(explained));
    }

    private void explain(Context ctx, Actor actor) {
        var explained =
                doors.practices().explain(actor, pathId(ctx, "sitting"), pathId(ctx, "item"));
        Json.answer(ctx, 200, ExplainedView.of(explained));
    }
}
