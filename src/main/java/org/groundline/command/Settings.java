package org.groundline.command;

import org.groundline.database.Address;
import org.groundline.error.Refusal;

import java.util.Map;
import java.util.Optional;

/// What the environment says about an own PostgreSQL.
///
/// @param server where and as whom the server logs in; empty for the embedded database
/// @param owner who owns the tables; needed by `migrate` only
record Settings(Optional<Address> server, Optional<Address> owner) {
    private static final String URL = "GROUNDLINE_DB_URL";
    private static final String USER = "GROUNDLINE_DB_USER";
    private static final String PASSWORD = "GROUNDLINE_DB_PASSWORD";
    private static final String OWNER_USER = "GROUNDLINE_DB_OWNER_USER";
    private static final String OWNER_PASSWORD = "GROUNDLINE_DB_OWNER_PASSWORD";

    static Settings of(Map<String, String> environment) {
        String url = environment.getOrDefault(URL, "");
        if (url.isEmpty()) {
            return new Settings(Optional.empty(), Optional.empty());
        }
        if (!url.startsWith("jdbc:postgresql:")) {
            throw new Refusal.Invalid(
                    URL,
                    URL + " begins with jdbc:postgresql:// and names host, port and database.");
        }
        Optional<Address> owner =
                environment.containsKey(OWNER_USER)
                        ? Optional.of(
                                new Address(
                                        url,
                                        needed(environment, OWNER_USER),
                                        needed(environment, OWNER_PASSWORD)))
                        : Optional.empty();
        Optional<Address> server =
                environment.containsKey(USER)
                        ? Optional.of(
                                new Address(
                                        url,
                                        needed(environment, USER),
                                        needed(environment, PASSWORD)))
                        : Optional.empty();
        return new Settings(server, owner);
    }

    private static String needed(Map<String, String> environment, String name) {
        String value = environment.get(name);
        if (value == null) {
            throw new Refusal.Invalid(name, URL + " is set, so " + name + " must be set, too.");
        }
        return value;
    }

    /// The server's own log-in at the PostgreSQL given.
    Address serverAt() {
        return server.orElseThrow(
                () ->
                        new Refusal.Invalid(
                                USER,
                                URL
                                        + " is set, so "
                                        + USER
                                        + " and "
                                        + PASSWORD
                                        + " must be set, too."));
    }

    /// The owner's log-in at the PostgreSQL given.
    Address ownerAt() {
        return owner.orElseThrow(
                () ->
                        new Refusal.Invalid(
                                OWNER_USER,
                                "`migrate` needs "
                                        + URL
                                        + ", "
                                        + OWNER_USER
                                        + " and "
                                        + OWNER_PASSWORD
                                        + "."));
    }

    /// Whether a PostgreSQL was given.
    boolean external() {
        return server.isPresent() || owner.isPresent();
    }
}
