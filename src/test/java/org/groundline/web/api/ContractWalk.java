package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.school.Action;
import org.groundline.school.Permissions;
import org.groundline.school.Role;
import org.groundline.school.Scope;
import org.groundline.web.TestServer;
import org.groundline.web.api.ApiDocument.Operation;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// Uses every operation once with success and once with each kind of failure.
final class ContractWalk {
    private static final String UNKNOWN_ID = "00000000-0000-4000-8000-000000000000";
    private static final String QUANTITY = "glide-distance";
    private static final Map<Role, String> PEOPLE = new LinkedHashMap<>();

    static {
        PEOPLE.put(Role.STUDENT, "ada");
        PEOPLE.put(Role.CHIEF_INSTRUCTOR, "cleo");
        PEOPLE.put(Role.AUTHOR, "otto");
        PEOPLE.put(Role.INSPECTOR, "ines");
        PEOPLE.put(Role.OPERATOR, "olaf");
    }

    private final TestServer server;
    private final TaughtSchool taught;
    private final ApiClient stranger;
    private final Map<String, ApiClient> clients = new HashMap<>();

    ContractWalk(TestServer server) {
        this.server = server;
        this.taught = new TaughtSchool(server);
        this.stranger = taught.stranger();
        server.givenPerson(taught.school, "otto", Role.AUTHOR);
        server.givenPerson(taught.school, "ines", Role.INSPECTOR);
        server.givenPerson(taught.school, "olaf", Role.OPERATOR);
    }

    Set<String> seen() {
        return stranger.seen();
    }

    void all() {
        ApiDocument.SHIPPED.operations().forEach(this::failures);
        new AccountWalk(taught, stranger).all();
        new SittingWalk(taught, stranger).all();
        new BriefWalk(taught, stranger).all();
        new TrainingWalk(taught, stranger).all();
        new SchoolWalk(taught, stranger).all();
    }

    /// What fails alike everywhere, as far as the document says so.
    private void failures(Operation operation) {
        Set<Integer> documented = operation.statuses();
        for (Failure failure : Failure.values()) {
            if (documented.contains(failure.status)) {
                ApiAnswer answer = fail(operation, failure);
                assertThat(answer.status())
                        .as(failure + " " + operation.id() + answer.body())
                        .isEqualTo(failure.status);
            }
        }
    }

    private enum Failure {
        UNKNOWN_PARAMETER(400),
        NO_TOKEN(401),
        NOT_ALLOWED(403),
        NO_SUCH_PLACE(404),
        TOO_LARGE(413),
        NO_JSON_TYPE(415);

        private final int status;

        Failure(int status) {
            this.status = status;
        }
    }

    private ApiAnswer fail(Operation operation, Failure failure) {
        String path = path(operation);
        ApiClient allowed = operation.isOpen() ? stranger : who(operation, true).orElseThrow();
        return switch (failure) {
            case UNKNOWN_PARAMETER ->
                    send(allowed, operation, path + "?nonsense=1", Optional.empty());
            case NO_TOKEN -> operation.isOpen() ? wrongPassword() : send(stranger, operation);
            case NOT_ALLOWED -> send(forbidden(operation), operation);
            case NO_SUCH_PLACE ->
                    send(
                            allowed,
                            operation,
                            path.replace("/" + taught.school.code() + "/", "/nowhere/")
                                    .replace(QUANTITY, "nothing"),
                            Optional.empty());
            case TOO_LARGE -> send(allowed, operation, path, Optional.of("x".repeat(80_000)));
            case NO_JSON_TYPE ->
                    send(
                            allowed.with("Content-Type", "text/plain"),
                            operation,
                            path,
                            Optional.of("{}"));
        };
    }

    private ApiAnswer wrongPassword() {
        return stranger.post("/sessions", Map.of("email", "nobody@x.example", "password", "no"));
    }

    private static ApiAnswer send(
            ApiClient client, Operation operation, String path, Optional<String> body) {
        return client.send(operation.method(), path, body);
    }

    private ApiAnswer send(ApiClient client, Operation operation) {
        return send(client, operation, path(operation), Optional.empty());
    }

    /// Somebody who may not: without a role for it, by a cookie without the form token where
    /// everybody may, or from another site's page where nobody need be logged in.
    private ApiClient forbidden(Operation operation) {
        if (operation.isOpen()) {
            return stranger.with("Origin", "https://elsewhere.example");
        }
        String code = taught.school.code();
        String cookie =
                "__Host-groundline-" + code + "=" + code + "." + server.token(taught.school, "ada");
        return who(operation, false).orElseGet(() -> stranger.with("Cookie", cookie));
    }

    private Optional<ApiClient> who(Operation operation, boolean may) {
        Action action =
                server.web().routes().stream()
                        .filter(r -> r.method().equals(operation.method()))
                        .filter(r -> r.path().equals(operation.path()))
                        .findFirst()
                        .orElseThrow()
                        .action()
                        .orElseThrow();
        return PEOPLE.entrySet().stream()
                .filter(
                        person ->
                                may
                                        != (Permissions.SHIPPED.scope(action, person.getKey())
                                                == Scope.NONE))
                .findFirst()
                .map(
                        person ->
                                clients.computeIfAbsent(
                                        person.getValue(),
                                        name -> stranger.as(taught.school, name)));
    }

    private String path(Operation operation) {
        return operation
                .path()
                .replace("{school}", taught.school.code())
                .replace("{name}", QUANTITY)
                .replaceAll("\\{\\w+}", UNKNOWN_ID);
    }
}
