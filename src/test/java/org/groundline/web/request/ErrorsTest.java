package org.groundline.web.request;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;

import io.javalin.Javalin;

import org.groundline.error.Refusal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;

/// What a failure looks like from outside, and what the log keeps of it.
class ErrorsTest {
    private final ListAppender<ILoggingEvent> log = new ListAppender<>();
    private final Javalin javalin =
            Javalin.create(
                    config -> {
                        config.startup.showJavalinBanner = false;
                        Errors.addTo(config.routes);
                        config.fileRenderer((file, model, ctx) -> "page " + file);
                        config.routes.get(
                                "/api/v1/fault",
                                ctx -> {
                                    throw new IllegalStateException("a secret of ours");
                                });
                        config.routes.get(
                                "/fault",
                                ctx -> {
                                    throw new IllegalStateException("a secret of ours");
                                });
                        config.routes.get(
                                "/api/v1/refused",
                                ctx -> {
                                    throw new Refusal.Invalid("email", "No address.");
                                });
                    });

    @BeforeEach
    void start() {
        log.start();
        ((Logger) LoggerFactory.getLogger(Errors.class)).addAppender(log);
        javalin.start("127.0.0.1", 0);
    }

    @AfterEach
    void stop() {
        ((Logger) LoggerFactory.getLogger(Errors.class)).detachAppender(log);
        javalin.stop();
    }

    private HttpResponse<String> get(String path) throws Exception {
        var request =
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + javalin.port() + path))
                        .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void aFaultOfTheProgramIsLoggedAndToldWithoutItsText() throws Exception {
        for (String path : new String[] {"/api/v1/fault", "/fault"}) {
            var answer = get(path);
            assertThat(answer.statusCode()).isEqualTo(500);
            assertThat(answer.body()).doesNotContain("secret").doesNotContain("IllegalState");
        }
        assertThat(log.list)
                .hasSize(2)
                .allSatisfy(
                        e ->
                                assertThat(e.getThrowableProxy().getMessage())
                                        .contains("a secret of ours"));
    }

    @Test
    void aRefusalUnderTheApiIsAProblemDocumentThatNamesTheField() throws Exception {
        var answer = get("/api/v1/refused");

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.headers().firstValue("Content-Type"))
                .contains("application/problem+json");
        assertThat(answer.body())
                .contains("\"type\":\"urn:groundline:problem:invalid\"")
                .contains("\"errors\":[{\"field\":\"email\",\"message\":\"No address.\"}]");
    }

    @Test
    void whatIsNotThereIsToldInTheSameForm() throws Exception {
        assertThat(get("/api/v1/nothing").body()).contains("urn:groundline:problem:not-found");
        assertThat(get("/nothing").body()).isEqualTo("page frame/error.jte");
    }
}
