package org.groundline.web.request;

import java.util.Map;

/// The kinds of problems that the server answers with, by status. A type never changes its meaning.
public final class Problems {
    private static final String ROOT = "urn:groundline:problem:";

    private record Kind(String name, String title) {}

    private static final Map<Integer, Kind> KINDS =
            Map.ofEntries(
                    Map.entry(400, new Kind("invalid", "The request cannot be understood")),
                    Map.entry(401, new Kind("not-logged-in", "Not logged in")),
                    Map.entry(403, new Kind("not-allowed", "Not allowed")),
                    Map.entry(404, new Kind("not-found", "Not found")),
                    Map.entry(405, new Kind("wrong-method", "This address does not take that")),
                    Map.entry(409, new Kind("conflict", "Not possible now")),
                    Map.entry(412, new Kind("stale", "Changed meanwhile")),
                    Map.entry(413, new Kind("too-large", "Too large")),
                    Map.entry(415, new Kind("wrong-type", "This kind of content is not taken")),
                    Map.entry(422, new Kind("key-reused", "The key was used for another request")),
                    Map.entry(428, new Kind("condition-missing", "A condition is missing")),
                    Map.entry(429, new Kind("too-many", "Too many tries")),
                    Map.entry(500, new Kind("fault", "Something went wrong")),
                    Map.entry(503, new Kind("busy", "Busy")));

    private Problems() {}

    static String typeOf(int status) {
        return ROOT + KINDS.getOrDefault(status, new Kind("other", "")).name();
    }

    static String titleOf(int status) {
        return KINDS.getOrDefault(status, new Kind("other", "Not carried out")).title();
    }
}
