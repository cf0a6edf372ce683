package org.groundline.web.request;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;

import org.groundline.error.Refusal;
import org.groundline.ledger.Digests;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Logins;
import org.groundline.school.School;
import org.groundline.school.Schools;
import org.jspecify.annotations.Nullable;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;

/// Finds out who is asking. A session's token comes in a cookie named after the school, or as a
/// bearer token; both begin with the school's code, which must be the one in the address. A request
/// that changes something and comes by cookie must also carry the form token, which only a page of
/// this server can know.
public final class Guard {
    /// Where the API begins.
    public static final String API = "/api/v1";

    /// The form field and, for scripts, the header that carry the form token.
    public static final String CSRF_FIELD = "csrf";

    static final String CSRF_HEADER = "X-CSRF-Token";

    private static final String COOKIE = "__Host-groundline-";
    private static final String BEARER = "Bearer ";
    private static final Set<HandlerType> HARMLESS = Set.of(HandlerType.GET, HandlerType.HEAD);

    private final Schools schools;
    private final Logins logins;

    public Guard(Schools schools, Logins logins) {
        this.schools = schools;
        this.logins = logins;
    }

    /// Returns who is asking.
    ///
    /// @throws Refusal.Unknown if nobody is logged in
    /// @throws Refusal.Forbidden if they may not do this, or the request comes from elsewhere
    Actor actorFor(Context ctx, Action action) {
        requireSameOrigin(ctx);
        School school = school(ctx);
        Token token =
                token(ctx, school).orElseThrow(() -> new Refusal.Unknown("You are not logged in."));
        Actor actor =
                logins.findActor(school, token.value())
                        .orElseThrow(
                                () ->
                                        new Refusal.Unknown(
                                                "Your log-in has run out. Log in again to go on."));
        if (token.byCookie() && !HARMLESS.contains(ctx.method())) {
            requireFormToken(ctx, token.value());
        }
        actor.requireAtAll(action);
        ctx.attribute(CSRF_FIELD, formToken(token.value()));
        return actor;
    }

    /// Returns who is logged in to the school of the address, if anybody.
    public Optional<Actor> findActor(Context ctx) {
        School school = school(ctx);
        return token(ctx, school).flatMap(token -> logins.findActor(school, token.value()));
    }

    /// Returns the school of the address.
    ///
    /// @throws Refusal.NotFound if there is none
    public School school(Context ctx) {
        return schools.getSchool(ctx.pathParam("school"));
    }

    private record Token(String value, boolean byCookie) {}

    private static Optional<Token> token(Context ctx, School school) {
        String header = ctx.header("Authorization");
        if (header != null && header.regionMatches(true, 0, BEARER, 0, BEARER.length())) {
            return ofSchool(header.substring(BEARER.length()), school)
                    .map(t -> new Token(t, false));
        }
        return ofSchool(ctx.cookie(COOKIE + school.code()), school).map(t -> new Token(t, true));
    }

    /// A token is the school's code, a full stop, and the session's own token.
    private static Optional<String> ofSchool(@Nullable String text, School school) {
        String lead = school.code() + ".";
        return text != null && text.startsWith(lead)
                ? Optional.of(text.substring(lead.length()))
                : Optional.empty();
    }

    private static void requireFormToken(Context ctx, String token) {
        String given = ctx.header(CSRF_HEADER);
        String sent = given != null ? given : String.valueOf(ctx.formParam(CSRF_FIELD));
        if (!MessageDigest.isEqual(bytes(sent), bytes(formToken(token)))) {
            throw new Refusal.Forbidden(
                    "This form was not sent from a page of your present log-in. Open the page again and repeat it.");
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String formToken(String token) {
        return HexFormat.of().formatHex(Digests.sha256(bytes("form "), bytes(token)));
    }

    /// Refuses a change that a page of another site has a browser send.
    void requireSameOrigin(Context ctx) {
        if (HARMLESS.contains(ctx.method())) {
            return;
        }
        String site = ctx.header("Sec-Fetch-Site");
        String origin = ctx.header("Origin");
        boolean foreign =
                (site != null && !site.equals("same-origin") && !site.equals("none"))
                        || (origin != null && !isOwn(origin, String.valueOf(ctx.header("Host"))));
        if (foreign) {
            throw new Refusal.Forbidden(
                    "This request comes from another site and was not carried out.");
        }
    }

    private static boolean isOwn(String origin, String host) {
        try {
            return host.equalsIgnoreCase(URI.create(origin).getAuthority());
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /// A session's token as programs send it.
    public static String bearer(School school, String token) {
        return school.code() + "." + token;
    }

    /// Sets the cookie of a new session.
    public void remember(Context ctx, School school, String token) {
        setCookie(ctx, school, bearer(school, token), "");
    }

    /// Takes the cookie back.
    public void forget(Context ctx, School school) {
        setCookie(ctx, school, "", "; Max-Age=0");
    }

    private static void setCookie(Context ctx, School school, String value, String rest) {
        ctx.res()
                .addHeader(
                        "Set-Cookie",
                        COOKIE
                                + school.code()
                                + "="
                                + value
                                + "; Path=/; Secure; HttpOnly; SameSite=Lax"
                                + rest);
    }
}
