package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;

import org.groundline.web.TestServer;
import org.groundline.web.api.ApiDocument.Operation;
import org.groundline.web.request.Routes.Route;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/// The OpenAPI document and the server say the same.
class ContractTest {
    private static final TestServer SERVER = TestServer.start();
    private static final String META = "https://json-schema.org/draft/2020-12/schema";

    /// What the document promises and this test does not bring about: a full queue of answers, a
    /// topic without questions, which the shipped bank does not have, and a server whose clock is
    /// wrong, which therefore opens no test.
    private static final Set<String> OUT_OF_REACH =
            Set.of("answerItem 503", "answerPractice 503", "practise 409", "openTest 409");

    private final JsonNode document = ApiDocument.SHIPPED.root();

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    @Test
    void theDocumentIsValidOpenApi() {
        String schema = ApiDocument.yaml("/openapi-3.1/schema.yaml").toString();
        ObjectNode spoilt = document.deepCopy();
        spoilt.remove("info");

        assertThat(ApiDocument.violations(schema, document.toString())).isEmpty();
        assertThat(ApiDocument.violations(schema, spoilt.toString())).isNotEmpty();
    }

    @Test
    void itsSchemasAreValidAndRefuseUnknownFields() {
        var registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        var meta = registry.getSchema(SchemaLocation.of(META));
        document.at("/components/schemas")
                .properties()
                .forEach(
                        named ->
                                assertThat(
                                                meta.validate(
                                                        named.getValue().toString(),
                                                        InputFormat.JSON))
                                        .as(named.getKey())
                                        .isEmpty());

        assertThat(document.findParents("properties"))
                .hasSizeGreaterThan(40)
                .allSatisfy(
                        schema ->
                                assertThat(schema.path("additionalProperties").asText("open"))
                                        .as(schema.toString())
                                        .isEqualTo("false"));
    }

    @Test
    void itsExamplesKeepItsSchemas() {
        List<JsonNode> exampled = document.findParents("example");

        assertThat(exampled).hasSizeGreaterThan(15);
        exampled.forEach(
                place ->
                        assertThat(
                                        ApiDocument.SHIPPED.violations(
                                                place.get("schema"),
                                                place.get("example").toString()))
                                .as(place.toString())
                                .isEmpty());
    }

    @Test
    void everyReferenceInItLeadsSomewhere() {
        assertThat(document.findValuesAsText("$ref"))
                .isNotEmpty()
                .allSatisfy(
                        ref ->
                                assertThat(document.at(ref.substring(1)).isMissingNode())
                                        .as(ref)
                                        .isFalse());
    }

    @Test
    void everyRouteIsInTheDocumentAndTheOtherWayRound() {
        Set<String> routes =
                SERVER.web().routes().stream()
                        .filter(Route::isApi)
                        .map(route -> route.method() + " " + route.path())
                        .collect(Collectors.toCollection(TreeSet::new));
        Set<String> documented =
                ApiDocument.SHIPPED.operations().stream()
                        .map(o -> o.method() + " " + o.path())
                        .collect(Collectors.toCollection(TreeSet::new));

        assertThat(documented).isEqualTo(routes).hasSizeGreaterThan(30);
    }

    @Test
    void everyOperationSaysWhatItIsAndNamesItsParameters() {
        for (Operation operation : ApiDocument.SHIPPED.operations()) {
            JsonNode item = document.get("paths").get(operation.path());
            Set<String> inPath =
                    java.util.stream.StreamSupport.stream(
                                    item.path("parameters").spliterator(), false)
                            .map(ApiDocument.SHIPPED::resolved)
                            .map(p -> "{" + p.get("name").asText() + "}")
                            .collect(Collectors.toSet());
            assertThat(operation.node().path("summary").asText()).isNotEmpty();
            assertThat(inPath)
                    .as(operation.path())
                    .isEqualTo(
                            java.util.regex.Pattern.compile("\\{\\w+}")
                                    .matcher(operation.path())
                                    .results()
                                    .map(java.util.regex.MatchResult::group)
                                    .collect(Collectors.toSet()));
        }
    }

    /// Every operation with every status that the document gives it; the client holds each answer
    /// against the document on the way.
    @Test
    void everyStatusInTheDocumentIsAnsweredAsItSays() {
        var walk = new ContractWalk(SERVER);
        walk.all();

        Set<String> documented = new TreeSet<>();
        for (Operation operation : ApiDocument.SHIPPED.operations()) {
            operation.statuses().forEach(status -> documented.add(operation.id() + " " + status));
        }
        documented.removeAll(OUT_OF_REACH);
        assertThat(new TreeSet<>(walk.seen())).isEqualTo(documented);
    }

    @Test
    void theServerGivesTheDocumentOutToEverybody() {
        var stranger = new TaughtSchool(SERVER).stranger();

        assertThat(stranger.get("/api/v1/openapi.json").json()).isEqualTo(document);
        assertThat(stranger.get("/api/v1/openapi.yaml").body()).startsWith("openapi: 3.1.0\n");
    }

    @Test
    void aWrongMethodIsToldWhichOnesAreTaken() {
        var stranger = new TaughtSchool(SERVER).stranger();

        ApiAnswer answer = stranger.put("/course");

        assertThat(answer.status()).isEqualTo(405);
        assertThat(answer.header("Allow")).isEqualTo("GET");
        assertThat(stranger.delete("/policy").header("Allow").split(", "))
                .containsExactlyInAnyOrder("GET", "PUT");
        assertThat(stranger.get("/nothing").status()).isEqualTo(404);
        assertThat(stranger.get("/api/v1/nothing").status()).isEqualTo(404);
    }
}
