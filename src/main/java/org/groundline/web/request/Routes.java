package org.groundline.web.request;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;

import org.groundline.school.Action;
import org.groundline.school.Actor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// All routes of the server. Each is either open to everybody or belongs to an action of the
/// permissions file, which is asked before the handler runs; there is no third kind. The list is
/// what the tests of every route walk.
public final class Routes {
    private final RoutesConfig javalin;
    private final Guard guard;
    private final List<Route> all = new ArrayList<>();

    public Routes(RoutesConfig javalin, Guard guard) {
        this.javalin = javalin;
        this.guard = guard;
    }

    /// One route.
    ///
    /// @param path with parameters in braces
    /// @param action whom it belongs to; empty for one that is open to everybody
    public record Route(String method, String path, Optional<Action> action) {
        /// Whether it speaks JSON.
        public boolean isApi() {
            return path.startsWith(Guard.API);
        }
    }

    /// Answers a request of somebody who is logged in and may do this at all; whose records it
    /// touches is asked by the door.
    @FunctionalInterface
    public interface ActorHandler {
        void handle(Context ctx, Actor actor) throws Exception;
    }

    /// Adds a route that reads.
    public void get(String path, Action action, ActorHandler handler) {
        add(HandlerType.GET, path, action, handler);
    }

    /// Adds a route that changes something.
    public void post(String path, Action action, ActorHandler handler) {
        add(HandlerType.POST, path, action, handler);
    }

    /// Adds a route that puts a thing into a state, however often it is sent.
    public void put(String path, Action action, ActorHandler handler) {
        add(HandlerType.PUT, path, action, handler);
    }

    /// Adds a route that takes a thing away.
    public void delete(String path, Action action, ActorHandler handler) {
        add(HandlerType.DELETE, path, action, handler);
    }

    private void add(HandlerType method, String path, Action action, ActorHandler handler) {
        all.add(new Route(method.name(), path, Optional.of(action)));
        javalin.addHttpHandler(
                method, path, ctx -> handler.handle(ctx, guard.actorFor(ctx, action)));
    }

    /// Adds a route that is open to everybody.
    public void open(HandlerType method, String path, Handler handler) {
        all.add(new Route(method.name(), path, Optional.empty()));
        javalin.addHttpHandler(
                method,
                path,
                ctx -> {
                    guard.requireSameOrigin(ctx);
                    handler.handle(ctx);
                });
    }

    /// The routes added so far.
    public List<Route> all() {
        return List.copyOf(all);
    }
}
