package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import org.groundline.school.School;
import org.groundline.web.TestServer;
import org.groundline.web.api.ApiDocument.Operation;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/// A program that uses the API and holds every answer against the document: its status, its type,
/// its headers, its body; and its own request, where that was carried out.
final class ApiClient {
    private static final HttpClient HTTP = HttpClient.newHttpClient();
    private static final ObjectMapper JSON = new ObjectMapper();

    private final TestServer server;
    private final String school;
    private final Map<String, String> headers;
    private final Set<String> seen;

    private ApiClient(
            TestServer server, String school, Map<String, String> headers, Set<String> seen) {
        this.server = server;
        this.school = school;
        this.headers = Map.copyOf(headers);
        this.seen = seen;
    }

    /// A program that is not logged in.
    static ApiClient stranger(TestServer server, School school) {
        return new ApiClient(server, school.code(), Map.of(), ConcurrentHashMap.newKeySet());
    }

    /// The same program, with a session of its own.
    ApiClient as(School school, String name) {
        return with("Authorization", "Bearer " + school.code() + "." + server.token(school, name));
    }

    /// The same program with one more header.
    ApiClient with(String header, String value) {
        Map<String, String> more = new HashMap<>(headers);
        more.put(header, value);
        return new ApiClient(server, school, more, seen);
    }

    /// The same program with a new key for an answer.
    ApiClient withKey(UUID key) {
        return with("Idempotency-Key", "\"" + key + "\"");
    }

    /// The same program at another school's address.
    ApiClient at(String otherSchool) {
        return new ApiClient(server, otherSchool, headers, seen);
    }

    /// What was seen of the document so far, each as operation and status.
    Set<String> seen() {
        return seen;
    }

    ApiAnswer get(String path) {
        return send("GET", path, Optional.empty());
    }

    ApiAnswer post(String path, Map<String, ?> body) {
        return send("POST", path, Optional.of(json(body)));
    }

    ApiAnswer post(String path) {
        return send("POST", path, Optional.empty());
    }

    ApiAnswer put(String path, Map<String, ?> body) {
        return send("PUT", path, Optional.of(json(body)));
    }

    ApiAnswer put(String path) {
        return send("PUT", path, Optional.empty());
    }

    ApiAnswer delete(String path) {
        return send("DELETE", path, Optional.empty());
    }

    static String json(Object value) {
        try {
            return JSON.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /// Sends whatever text as the body.
    ///
    /// @param path below the school, or the whole address where it begins with /api
    ApiAnswer send(String method, String path, Optional<String> body) {
        return send(method, path, body, body.map(text -> text.getBytes(StandardCharsets.UTF_8)));
    }

    /// Sends whatever bytes as the body.
    ApiAnswer sendBytes(String method, String path, byte[] body) {
        return send(method, path, Optional.empty(), Optional.of(body));
    }

    private ApiAnswer send(
            String method, String path, Optional<String> body, Optional<byte[]> bytes) {
        String address = path.startsWith("/api/") ? path : "/api/v1/schools/" + school + path;
        var request = HttpRequest.newBuilder(URI.create(origin() + address));
        Map<String, String> all = new HashMap<>(headers);
        bytes.ifPresent(sent -> all.putIfAbsent("Content-Type", "application/json"));
        all.forEach(request::header);
        request.method(
                method,
                bytes.map(HttpRequest.BodyPublishers::ofByteArray)
                        .orElse(HttpRequest.BodyPublishers.noBody()));
        var answer = new ApiAnswer(exchange(request.build()));
        hold(method, address.replaceFirst("\\?.*", ""), body, answer);
        return answer;
    }

    private String origin() {
        return "http://127.0.0.1:" + server.web().port();
    }

    private static HttpResponse<String> exchange(HttpRequest request) {
        try {
            return HTTP.send(request, HttpResponse.BodyHandlers.ofString());
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(request.toString(), e);
        }
    }

    private void hold(String method, String address, Optional<String> body, ApiAnswer answer) {
        ApiDocument document = ApiDocument.SHIPPED;
        String what = method + " " + address + " → " + answer.status() + " " + answer.body();
        Optional<Operation> operation = document.find(method, address);
        if (operation.isEmpty()) {
            assertThat(answer.status()).as(what).isIn(404, 405);
            holdProblem(what, answer);
            return;
        }
        Operation known = operation.get();
        JsonNode response =
                document.findResponse(known, answer.status())
                        .orElseThrow(() -> new AssertionError("not in the document: " + what));
        holdHeaders(what, response, answer);
        holdBody(what, response, answer);
        if (answer.status() < 300 && body.isPresent()) {
            assertThat(document.requestViolations(known, body.get())).as(what).isEmpty();
        }
        seen.add(known.id() + " " + answer.status());
    }

    private static void holdProblem(String what, ApiAnswer answer) {
        assertThat(answer.type()).as(what).isEqualTo("application/problem+json");
        JsonNode schema = JSON.createObjectNode().put("$ref", "#/components/schemas/Problem");
        assertThat(ApiDocument.SHIPPED.violations(schema, answer.body())).as(what).isEmpty();
        assertThat(answer.at("/status").asInt()).as(what).isEqualTo(answer.status());
    }

    private static void holdHeaders(String what, JsonNode response, ApiAnswer answer) {
        ApiDocument document = ApiDocument.SHIPPED;
        for (var header : response.path("headers").properties()) {
            JsonNode schema = document.resolved(header.getValue()).get("schema");
            String value = answer.header(header.getKey());
            assertThat(document.violations(schema, json(value))).as(what).isEmpty();
            assertThat(value).as(header.getKey() + " of " + what).isNotEmpty();
        }
        for (String tag : List.of("ETag", "Allow", "Location", "Retry-After")) {
            assertThat(answer.header(tag).isEmpty() || response.path("headers").has(tag))
                    .as(tag + " is not in the document: " + what)
                    .isTrue();
        }
    }

    private static void holdBody(String what, JsonNode response, ApiAnswer answer) {
        if (!response.has("content")) {
            assertThat(answer.body()).as(what).isEmpty();
            return;
        }
        String type = answer.type();
        JsonNode content = response.get("content").get(type);
        assertThat(content).as("the type " + type + " of " + what).isNotNull();
        if (type.endsWith("json")) {
            assertThat(ApiDocument.SHIPPED.violations(content.get("schema"), answer.body()))
                    .as(what)
                    .isEmpty();
        }
        if (type.startsWith("application/problem")) {
            holdProblem(what, answer);
        }
    }
}
