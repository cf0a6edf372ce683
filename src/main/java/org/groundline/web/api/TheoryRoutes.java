package org.groundline.web.api;

import io.javalin.http.Context;

import org.groundline.formulary.Formulary;

import java.util.LinkedHashMap;
import java.util.Map;

/// The quantities of flight theory, open to everybody: they belong to no school and know nobody.
final class TheoryRoutes {
    void addTo(ApiRoutes routes) {
        routes.openGet(
                "/theory",
                ctx ->
                        Json.answer(
                                ctx,
                                200,
                                new QuantitiesView(
                                        Formulary.list().stream().map(QuantityView::of).toList())));
        routes.openQuery("/theory/{name}", TheoryRoutes::evaluate);
    }

    /// Each query parameter is an input.
    private static void evaluate(Context ctx) {
        Map<String, String> given = new LinkedHashMap<>();
        ctx.queryParamMap().forEach((name, values) -> given.put(name, values.getFirst()));
        Json.answer(ctx, 200, Formulary.evaluate(ctx.pathParam("name"), given));
    }
}
