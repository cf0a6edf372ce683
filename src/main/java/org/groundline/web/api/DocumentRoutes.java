package org.groundline.web.api;

import io.javalin.http.Context;

import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/// The OpenAPI document, as written and as JSON.
final class DocumentRoutes {
    private static final String RESOURCE = "/api/openapi.yaml";

    private final byte[] yaml = read();
    private final byte[] json =
            Json.bytes(
                    new Load(LoadSettings.builder().build())
                            .loadFromString(new String(yaml, StandardCharsets.UTF_8)));

    void addTo(ApiRoutes routes) {
        routes.openGet("/openapi.yaml", ctx -> answer(ctx, "application/yaml", yaml));
        routes.openGet("/openapi.json", ctx -> answer(ctx, Json.TYPE, json));
    }

    private static void answer(Context ctx, String type, byte[] document) {
        Tag.of(document).answer(ctx, type, document);
    }

    private static byte[] read() {
        try (InputStream stream = DocumentRoutes.class.getResourceAsStream(RESOURCE)) {
            if (stream == null) {
                throw new IllegalStateException(RESOURCE + " is missing from the program");
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException(RESOURCE + " cannot be read", e);
        }
    }
}
