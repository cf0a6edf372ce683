package org.groundline.web.request;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.ObjectMapper;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.MethodNotAllowedResponse;

import org.groundline.error.Refusal;
import org.groundline.ledger.Audit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.MDC;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/// Turns what was thrown into an answer: a page for people, a problem document (RFC 9457) under the
/// API and for the script of a page. A fault of the program is logged and answered without its
/// text.
public final class Errors {
    private static final Logger LOG = LoggerFactory.getLogger(Errors.class);
    private static final ObjectMapper JSON = new ObjectMapper();

    private Errors() {}

    /// A page that says what went wrong.
    ///
    /// @param request the id under which the log tells more
    public record ErrorPage(Frame frame, int status, String message, String request) {}

    /// A problem document of RFC 9457.
    ///
    /// @param type names the kind of problem for ever; described in the API's document
    /// @param errors the fields at fault
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Problem(
            String type,
            String title,
            int status,
            String detail,
            String request,
            List<Field> errors) {
        public Problem {
            errors = List.copyOf(errors);
        }

        /// One field at fault.
        public record Field(String field, String message) {}
    }

    /// Hangs the answers to failures into the server.
    public static void addTo(RoutesConfig javalin) {
        javalin.exception(Refusal.class, (refusal, ctx) -> answer(ctx, refusal));
        javalin.exception(HttpResponseException.class, (e, ctx) -> answer(ctx, e));
        javalin.exception(
                Exception.class,
                (e, ctx) -> {
                    LOG.error("{} {} failed", ctx.method(), ctx.path(), e);
                    answer(
                            ctx,
                            500,
                            "Something went wrong here, and it was noted. What was saved before is kept. Try again.",
                            "");
                });
        javalin.error(
                404,
                "*",
                ctx -> {
                    if (ctx.result() == null || "Not Found".equals(ctx.result())) {
                        answer(ctx, 404, "There is no such page or record.", "");
                    }
                });
    }

    private static void answer(Context ctx, HttpResponseException e) {
        if (e instanceof MethodNotAllowedResponse) {
            ctx.header("Allow", String.join(", ", e.getDetails().values()));
        }
        answer(ctx, e.getStatus(), titleOf(e.getStatus()), "");
    }

    private static void answer(Context ctx, Refusal refusal) {
        if (refusal instanceof Refusal.Unknown && !wantsJson(ctx) && findSchool(ctx).isPresent()) {
            String page = ctx.method() == HandlerType.GET ? ctx.path() : "";
            String next = URLEncoder.encode(page, StandardCharsets.UTF_8);
            ctx.redirect("/" + findSchool(ctx).get() + "/login?next=" + next);
            return;
        }
        if (refusal instanceof Refusal.Unknown && wantsJson(ctx)) {
            ctx.header("WWW-Authenticate", "Bearer");
        }
        if (refusal instanceof Refusal.TooMany) {
            ctx.header("Retry-After", "900");
        }
        if (refusal instanceof Refusal.Busy) {
            ctx.header("Retry-After", "1");
        }
        String field = refusal instanceof Refusal.Invalid invalid ? invalid.field() : "";
        answer(ctx, statusOf(refusal), messageOf(refusal), field);
    }

    /// What a refusal says to people.
    public static String messageOf(Refusal refusal) {
        return Objects.requireNonNullElse(refusal.getMessage(), "");
    }

    /// The status that a refusal is answered with.
    public static int statusOf(Refusal refusal) {
        return switch (refusal) {
            case Refusal.Invalid invalid -> 400;
            case Refusal.Unknown unknown -> 401;
            case Refusal.Forbidden forbidden -> 403;
            case Refusal.NotFound missing -> 404;
            case Refusal.Conflict conflict -> 409;
            case Refusal.Stale stale -> 412;
            case Refusal.Mismatch mismatch -> 422;
            case Refusal.Unconditional unconditional -> 428;
            case Refusal.TooMany tooMany -> 429;
            case Refusal.Busy busy -> 503;
        };
    }

    private static void answer(Context ctx, int status, String message, String field) {
        ctx.status(status);
        String request = Objects.requireNonNullElse(MDC.get(Audit.REQUEST), "");
        if (wantsJson(ctx)) {
            List<Problem.Field> errors =
                    field.isEmpty() ? List.of() : List.of(new Problem.Field(field, message));
            write(
                    ctx,
                    new Problem(
                            Problems.typeOf(status),
                            titleOf(status),
                            status,
                            message,
                            request,
                            errors));
        } else {
            Frame frame = Frame.open(ctx, Optional.empty(), titleOf(status));
            ctx.render(
                    "frame/error.jte",
                    Map.of("page", new ErrorPage(frame, status, message, request)));
        }
    }

    private static void write(Context ctx, Problem problem) {
        try {
            ctx.contentType("application/problem+json").result(JSON.writeValueAsBytes(problem));
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new IllegalStateException("a problem cannot be written", e);
        }
    }

    /// Whether the sender reads JSON: everybody under the API, and the script of a page.
    public static boolean wantsJson(Context ctx) {
        return ctx.path().startsWith(Guard.API) || "application/json".equals(ctx.header("Accept"));
    }

    private static Optional<String> findSchool(Context ctx) {
        return Optional.ofNullable(ctx.pathParamMap().get("school"));
    }

    private static String titleOf(int status) {
        return Problems.titleOf(status);
    }
}
