package org.groundline.web;

import io.javalin.http.HandlerType;

import org.groundline.web.request.Routes;

import java.util.List;

/// For whoever watches over the server.
final class HealthRoutes {
    private final Readiness readiness;

    HealthRoutes(Readiness readiness) {
        this.readiness = readiness;
    }

    void addTo(Routes routes) {
        routes.open(HandlerType.GET, "/health", ctx -> ctx.result("up\n"));
        routes.open(
                HandlerType.GET,
                "/ready",
                ctx -> {
                    List<String> reasons = readiness.reasons().get();
                    ctx.status(reasons.isEmpty() ? 200 : 503);
                    ctx.result(reasons.isEmpty() ? "ready\n" : String.join("\n", reasons) + "\n");
                });
    }
}
