package org.groundline.web.api;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;

import org.groundline.error.Refusal;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.request.Guard;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Routes.ActorHandler;

import java.util.List;
import java.util.Set;

/// The routes of the API, below the address of a school. Each keeps the same rules: no query
/// parameter but those it names, each of them once; a body where one is asked for and nowhere else.
final class ApiRoutes {
    private static final String SCHOOL = Guard.API + "/schools/{school}";

    private final Routes routes;

    ApiRoutes(Routes routes) {
        this.routes = routes;
    }

    /// Answers a request that carries a body.
    @FunctionalInterface
    interface BodyHandler<T> {
        void handle(Context ctx, Actor actor, T body) throws Exception;
    }

    /// Adds a route that reads.
    ///
    /// @param query the query parameters it takes
    void get(String path, Action action, ActorHandler handler, String... query) {
        Set<String> known = Set.of(query);
        routes.get(
                SCHOOL + path,
                action,
                (ctx, actor) -> {
                    requireOnly(ctx, known);
                    handler.handle(ctx, actor);
                });
    }

    void post(String path, Action action, ActorHandler handler) {
        routes.post(SCHOOL + path, action, withoutBody(handler));
    }

    <T extends Record> void post(
            String path, Action action, Class<T> type, BodyHandler<T> handler) {
        routes.post(SCHOOL + path, action, withBody(type, handler));
    }

    void put(String path, Action action, ActorHandler handler) {
        routes.put(SCHOOL + path, action, withoutBody(handler));
    }

    <T extends Record> void put(String path, Action action, Class<T> type, BodyHandler<T> handler) {
        routes.put(SCHOOL + path, action, withBody(type, handler));
    }

    void delete(String path, Action action, ActorHandler handler) {
        routes.delete(SCHOOL + path, action, withoutBody(handler));
    }

    /// Adds a route of a school that is open to everybody.
    void openPost(String path, Handler handler) {
        routes.open(HandlerType.POST, SCHOOL + path, withoutQuery(handler));
    }

    /// Adds a route that belongs to no school and is open to everybody.
    void openGet(String path, Handler handler) {
        routes.open(HandlerType.GET, Guard.API + path, withoutQuery(handler));
    }

    /// Adds a route that belongs to no school, is open to everybody, and itself decides which query
    /// parameters it knows.
    void openQuery(String path, Handler handler) {
        routes.open(
                HandlerType.GET,
                Guard.API + path,
                ctx -> {
                    ctx.queryParamMap().forEach(ApiRoutes::requireOnce);
                    handler.handle(ctx);
                });
    }

    private static Handler withoutQuery(Handler handler) {
        return ctx -> {
            requireOnly(ctx, Set.of());
            handler.handle(ctx);
        };
    }

    private static ActorHandler withoutBody(ActorHandler handler) {
        return (ctx, actor) -> {
            requireOnly(ctx, Set.of());
            if (ctx.bodyAsBytes().length > 0) {
                throw new Refusal.Invalid("This request takes no body. Send it without one.");
            }
            handler.handle(ctx, actor);
        };
    }

    private static <T extends Record> ActorHandler withBody(Class<T> type, BodyHandler<T> handler) {
        return (ctx, actor) -> {
            requireOnly(ctx, Set.of());
            handler.handle(ctx, actor, BodyReader.read(ctx, type));
        };
    }

    private static void requireOnly(Context ctx, Set<String> known) {
        for (var given : ctx.queryParamMap().entrySet()) {
            requireKnown(given.getKey(), given.getValue(), known);
        }
    }

    private static void requireKnown(String name, List<String> values, Set<String> known) {
        if (!known.contains(name)) {
            throw new Refusal.Invalid(name, "This query parameter is not known here.");
        }
        requireOnce(name, values);
    }

    private static void requireOnce(String name, List<String> values) {
        if (values.size() > 1) {
            throw new Refusal.Invalid(name, "This query parameter was sent more than once.");
        }
    }
}
