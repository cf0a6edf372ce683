package org.groundline.web.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import java.net.http.HttpResponse;
import java.util.UUID;

/// What the API answered.
record ApiAnswer(HttpResponse<String> response) {
    private static final ObjectMapper JSON = new ObjectMapper();

    int status() {
        return response.statusCode();
    }

    String body() {
        return response.body();
    }

    String header(String name) {
        return response.headers().firstValue(name).orElse("");
    }

    /// The media type, which is UTF-8 whether it says so or not.
    String type() {
        return header("Content-Type").replaceFirst(";charset=utf-8$", "");
    }

    JsonNode json() {
        try {
            return JSON.readTree(body());
        } catch (JsonProcessingException e) {
            throw new AssertionError("no JSON: " + body(), e);
        }
    }

    /// A part of the answer by its JSON Pointer.
    JsonNode at(String pointer) {
        return json().at(pointer);
    }

    String text(String pointer) {
        return at(pointer).asText();
    }

    UUID id(String pointer) {
        return UUID.fromString(text(pointer));
    }
}
