package org.groundline.web.api;

import static org.groundline.web.request.Form.queryId;

import io.javalin.http.Context;

import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;

/// Pass rates by topic.
final class RateRoutes {
    private final Doors doors;

    RateRoutes(Doors doors) {
        this.doors = doors;
    }

    void addTo(ApiRoutes routes) {
        routes.get("/rates", Action.READ_RATES, this::rates, "intake");
    }

    private void rates(Context ctx, Actor actor) {
        var rates = doors.rates().byTopic(actor, queryId(ctx, "intake"));
        Json.answer(ctx, 200, RatesView.of(rates));
    }
}
