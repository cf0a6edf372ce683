package org.groundline.web.api;

import io.javalin.http.Context;

import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;

/// The course, and where the one who asks stands in it.
final class CourseRoutes {
    private final Doors doors;
    private final Records records;

    CourseRoutes(Doors doors) {
        this.doors = doors;
        this.records = new Records(doors);
    }

    void addTo(ApiRoutes routes) {
        routes.get("/course", Action.READ_COURSE, this::course);
        routes.get("/me/record", Action.READ_COURSE, this::record);
        routes.get("/me/progress", Action.PRACTISE, this::progress);
        routes.get("/me/openings", Action.SIT, this::openings);
    }

    private void course(Context ctx, Actor actor) {
        byte[] course = Json.bytes(CourseView.of(doors.bank().course()));
        Tag.of(course).answer(ctx, Json.TYPE, course);
    }

    private void record(Context ctx, Actor actor) {
        byte[] record = records.of(actor, actor.subject());
        Tag.of(record).answer(ctx, Json.TYPE, record);
    }

    private void progress(Context ctx, Actor actor) {
        var progress = doors.practices().progress(actor);
        Json.answer(ctx, 200, ProgressView.of(doors.bank().course(), progress));
    }

    private void openings(Context ctx, Actor actor) {
        var openings = doors.openings().listMine(actor);
        var begun = doors.sittings().listOpen(actor);
        Json.answer(ctx, 200, OpeningsView.mine(openings, begun, doors.foundation().now()));
    }
}
