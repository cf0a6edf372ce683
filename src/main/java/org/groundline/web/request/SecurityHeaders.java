package org.groundline.web.request;

import io.javalin.http.Context;

import java.util.Map;

/// What every answer tells a browser to refuse. Scripts and styles come from this server's own
/// files only; nothing inline runs.
public final class SecurityHeaders {
    private static final Map<String, String> HEADERS =
            Map.of(
                    "Content-Security-Policy",
                    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self';"
                            + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
                    "X-Content-Type-Options",
                    "nosniff",
                    "Referrer-Policy",
                    "same-origin",
                    "Cross-Origin-Opener-Policy",
                    "same-origin",
                    "Cross-Origin-Resource-Policy",
                    "same-origin",
                    "Permissions-Policy",
                    "camera=(), microphone=(), geolocation=()");

    private SecurityHeaders() {}

    /// Sets them on an answer. Pages and documents are kept by no cache; the style sheet, script
    /// and fonts are.
    public static void addTo(Context ctx) {
        HEADERS.forEach(ctx::header);
        ctx.header(
                "Cache-Control",
                ctx.path().startsWith("/static/") ? "public, max-age=3600" : "no-store");
    }
}
