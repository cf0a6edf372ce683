package org.groundline.web.api;

import static org.groundline.web.request.Form.pathId;

import io.javalin.http.Context;

import org.groundline.bank.Brief;
import org.groundline.bank.Topic;
import org.groundline.database.SubjectId;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;

/// The briefs of topics, and who has read them.
final class BriefRoutes {
    private final Doors doors;

    BriefRoutes(Doors doors) {
        this.doors = doors;
    }

    record AcknowledgementBody(String version) {}

    void addTo(ApiRoutes routes) {
        String brief = "/briefs/{topic}";
        routes.get("/briefs", Action.READ_BRIEF, this::list);
        routes.get(brief, Action.READ_BRIEF, this::show);
        routes.post(
                brief + "/acknowledgements",
                Action.ACKNOWLEDGE_BRIEF,
                AcknowledgementBody.class,
                this::acknowledge);
        routes.get("/students/{subject}/briefs", Action.READ_STUDENT, this::ofStudent);
    }

    private void list(Context ctx, Actor actor) {
        Json.answer(ctx, 200, ReadingView.All.of(doors.readings().listOwn(actor)));
    }

    private void show(Context ctx, Actor actor) {
        Brief brief = doors.readings().getBrief(actor, ctx.pathParam("topic"));
        String title =
                doors.bank().course().findTopic(brief.topic()).map(Topic::title).orElseThrow();
        Json.answer(ctx, 200, BriefView.of(brief, title, doors.readings().getOwn(actor, brief)));
    }

    private void acknowledge(Context ctx, Actor actor, AcknowledgementBody body) {
        String topic = ctx.pathParam("topic");
        doors.readings().acknowledge(actor, topic, body.version());
        Brief brief = doors.readings().getBrief(actor, topic);
        Json.answer(ctx, 200, ReadingView.of(doors.readings().getOwn(actor, brief)));
    }

    private void ofStudent(Context ctx, Actor actor) {
        var student = new SubjectId(pathId(ctx, "subject"));
        Json.answer(ctx, 200, ReadingView.All.of(doors.readings().listOf(actor, student)));
    }
}
