package org.groundline.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.staticfiles.Location;

import org.groundline.ledger.Audit;
import org.groundline.web.account.AccountPages;
import org.groundline.web.api.Api;
import org.groundline.web.author.AuthorPages;
import org.groundline.web.brief.BriefPages;
import org.groundline.web.request.Errors;
import org.groundline.web.request.Guard;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Routes.Route;
import org.groundline.web.request.SecurityHeaders;
import org.groundline.web.staff.StaffPages;
import org.groundline.web.student.StudentPages;
import org.slf4j.MDC;

import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/// The HTTP server: pages for people, JSON under `/api/v1`.
public final class WebServer implements AutoCloseable {
    private static final long LARGEST_REQUEST = 64 * 1024L;
    private static final int REQUEST_ID_BYTES = 8;

    private final Javalin javalin;
    private final List<Route> routes;

    private WebServer(Javalin javalin, List<Route> routes) {
        this.javalin = javalin;
        this.routes = routes;
    }

    /// Starts to answer.
    ///
    /// @param host the address to listen on
    /// @param port 0 for any that is free
    public static WebServer start(Doors doors, Readiness readiness, String host, int port) {
        var guard = new Guard(doors.schools(), doors.logins());
        List<Route> routes = new ArrayList<>();
        Javalin javalin =
                Javalin.create(
                        config -> {
                            configure(config);
                            var all = new Routes(config.routes, guard);
                            addPages(all, doors, guard, readiness);
                            routes.addAll(all.all());
                        });
        javalin.start(host, port);
        return new WebServer(javalin, List.copyOf(routes));
    }

    private static void addPages(Routes routes, Doors doors, Guard guard, Readiness readiness) {
        new HealthRoutes(readiness).addTo(routes);
        new AccountPages(doors, guard).addTo(routes);
        new StudentPages(doors).addTo(routes);
        new BriefPages(doors).addTo(routes);
        new StaffPages(doors).addTo(routes);
        new AuthorPages(doors).addTo(routes);
        new Api(doors, guard).addTo(routes);
    }

    private static void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.concurrency.useVirtualThreads = true;
        config.http.maxRequestSize = LARGEST_REQUEST;
        config.http.prefer405over404 = true;
        config.http.defaultContentType = "text/plain; charset=utf-8";
        config.staticFiles.add(
                files -> {
                    files.hostedPath = "/static";
                    files.directory = "/static";
                    files.location = Location.CLASSPATH;
                });
        TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);
        config.fileRenderer((file, model, ctx) -> render(templates, file, model));
        config.routes.before(WebServer::begin);
        config.routes.after(ctx -> MDC.remove(Audit.REQUEST));
        Errors.addTo(config.routes);
    }

    private static String render(TemplateEngine templates, String file, Map<String, ?> model) {
        var out = new StringOutput();
        templates.render(file, Map.copyOf(model), out);
        return out.toString();
    }

    private static void begin(Context ctx) {
        byte[] id = new byte[REQUEST_ID_BYTES];
        new SecureRandom().nextBytes(id);
        MDC.put(Audit.REQUEST, HexFormat.of().formatHex(id));
        SecurityHeaders.addTo(ctx);
    }

    /// The port it listens on.
    public int port() {
        return javalin.port();
    }

    /// All routes it answers, for the tests that walk them.
    public List<Route> routes() {
        return routes;
    }

    /// Finishes the requests that run, then stops.
    @Override
    public void close() {
        javalin.stop();
    }
}
