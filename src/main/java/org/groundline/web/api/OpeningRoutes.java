package org.groundline.web.api;

import static org.groundline.web.request.Form.pathId;

import io.javalin.http.Context;

import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.sitting.Openings.NewOpening;
import org.groundline.sitting.Sitting;
import org.groundline.web.Doors;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// Tests opened for intakes, and beginning one.
final class OpeningRoutes {
    private final Doors doors;

    OpeningRoutes(Doors doors) {
        this.doors = doors;
    }

    record OpeningBody(String module, UUID intake, int windowMinutes, Optional<String> place) {
        NewOpening wish() {
            return new NewOpening(
                    module, intake, Duration.ofMinutes(windowMinutes), place.orElse(""));
        }
    }

    void addTo(ApiRoutes routes) {
        routes.get("/openings", Action.READ_OPENING, this::list);
        routes.post("/openings", Action.OPEN_TEST, OpeningBody.class, this::open);
        routes.post("/openings/{opening}/sittings", Action.SIT, this::begin);
    }

    private void list(Context ctx, Actor actor) {
        var openings = doors.openings().listOpenings(actor);
        Json.answer(ctx, 200, OpeningsView.all(openings, doors.foundation().now()));
    }

    private void open(Context ctx, Actor actor, OpeningBody body) {
        var opening = doors.openings().open(actor, body.wish());
        Json.answer(ctx, 201, OpeningsView.one(opening, doors.foundation().now()));
    }

    private void begin(Context ctx, Actor actor) {
        List<UUID> openBefore =
                doors.sittings().listOpen(actor).stream().map(s -> s.facts().id()).toList();
        UUID id = doors.sittings().begin(actor, pathId(ctx, "opening"));
        Sitting sitting = doors.sittings().getSitting(actor, id);
        boolean begunNow = sitting instanceof Sitting.Open && !openBefore.contains(id);
        ctx.header("Location", root(ctx) + "/sittings/" + id);
        Json.answer(ctx, begunNow ? 201 : 200, BegunView.of(sitting));
    }

    private static String root(Context ctx) {
        return ctx.path().substring(0, ctx.path().indexOf("/openings/"));
    }
}
