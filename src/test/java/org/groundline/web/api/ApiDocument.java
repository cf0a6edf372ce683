package org.groundline.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;

import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/// The OpenAPI document as the tests read it: what it says of a request and its answer.
final class ApiDocument {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Map<String, Schema> COMPILED = new ConcurrentHashMap<>();
    private static final Set<String> METHODS = Set.of("get", "put", "post", "delete", "patch");

    static final ApiDocument SHIPPED = new ApiDocument(yaml("/api/openapi.yaml"));

    private final JsonNode root;
    private final List<Operation> operations = new ArrayList<>();

    private ApiDocument(JsonNode root) {
        this.root = root;
        root.get("paths")
                .properties()
                .forEach(
                        path ->
                                path.getValue().properties().stream()
                                        .filter(o -> METHODS.contains(o.getKey()))
                                        .forEach(
                                                o ->
                                                        operations.add(
                                                                new Operation(
                                                                        o.getKey().toUpperCase(),
                                                                        path.getKey(),
                                                                        o.getValue()))));
    }

    /// One method on one path.
    record Operation(String method, String path, JsonNode node) {
        String id() {
            return node.get("operationId").asText();
        }

        Set<Integer> statuses() {
            Set<Integer> statuses = new TreeSet<>();
            node.get("responses")
                    .fieldNames()
                    .forEachRemaining(s -> statuses.add(Integer.valueOf(s)));
            return statuses;
        }

        boolean isOpen() {
            return node.path("security").isArray() && node.path("security").isEmpty();
        }

        boolean takesBody() {
            return node.has("requestBody");
        }

        private boolean matches(String method, String address) {
            return method.equals(this.method)
                    && address.matches(path.replaceAll("\\{\\w+}", "[^/]+"));
        }
    }

    static JsonNode yaml(String resource) {
        try (InputStream stream = ApiDocument.class.getResourceAsStream(resource)) {
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            return new ObjectMapper()
                    .valueToTree(new Load(LoadSettings.builder().build()).loadFromString(text));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    JsonNode root() {
        return root;
    }

    List<Operation> operations() {
        return operations;
    }

    /// The operation behind an address without its query.
    Optional<Operation> find(String method, String address) {
        return operations.stream().filter(o -> o.matches(method, address)).findFirst();
    }

    /// What the document says an operation answers with a status; empty where it does not.
    Optional<JsonNode> findResponse(Operation operation, int status) {
        return Optional.ofNullable(operation.node().get("responses").get(String.valueOf(status)))
                .map(this::resolved);
    }

    JsonNode resolved(JsonNode node) {
        String ref = node.path("$ref").asText();
        return ref.isEmpty() ? node : root.at(ref.substring(1));
    }

    /// What the schema of a request's body has against one.
    List<String> requestViolations(Operation operation, String json) {
        JsonNode content = operation.node().at("/requestBody/content/application~1json/schema");
        return violations(content, json);
    }

    /// What a schema of this document has against a JSON text.
    List<String> violations(JsonNode schema, String json) {
        ObjectNode whole = JSON.createObjectNode();
        whole.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        whole.set("allOf", JSON.createArrayNode().add(schema));
        whole.set("$defs", root.at("/components/schemas"));
        return violations(whole.toString().replace("#/components/schemas/", "#/$defs/"), json);
    }

    /// What a complete schema has against a JSON text; formats are held, too.
    static List<String> violations(String schema, String json) {
        return COMPILED
                .computeIfAbsent(schema, REGISTRY::getSchema)
                .validate(
                        json,
                        InputFormat.JSON,
                        run -> run.executionConfig(c -> c.formatAssertionsEnabled(true)))
                .stream()
                .map(Error::toString)
                .toList();
    }
}
