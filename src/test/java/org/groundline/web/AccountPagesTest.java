package org.groundline.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.school.Role;
import org.groundline.school.School;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.net.http.HttpRequest;
import java.time.Duration;
import java.util.Map;

/// Coming in, staying out, and what every answer says to a browser.
class AccountPagesTest {
    private static final TestServer SERVER = TestServer.start();
    private final School school =
            SERVER.givenSchool("s" + TestServer.newId().toString().substring(0, 8));

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    @Test
    void whoKnowsThePasswordComesInByACookieThatScriptsCannotRead() {
        SERVER.givenPerson(school, "ada", Role.STUDENT);

        var answer =
                SERVER.stranger(school)
                        .post(
                                "/login",
                                Map.of(
                                        "email",
                                        "ADA@" + school.code() + ".example",
                                        "password",
                                        TestServer.PASSWORD));

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(answer.headers().firstValue("Set-Cookie").orElseThrow())
                .startsWith("__Host-groundline-" + school.code() + "=" + school.code() + ".")
                .contains("; Path=/; Secure; HttpOnly; SameSite=Lax");
    }

    @Test
    void aWrongPasswordAndAnUnknownAddressAreAnsweredAlike() {
        SERVER.givenPerson(school, "ada", Role.STUDENT);
        var stranger = SERVER.stranger(school);

        var wrong =
                stranger.post(
                        "/login",
                        Map.of("email", "ada@" + school.code() + ".example", "password", "no"));
        var unknown =
                stranger.post(
                        "/login",
                        Map.of("email", "bob@" + school.code() + ".example", "password", "no"));

        assertThat(wrong.statusCode()).isEqualTo(401);
        assertThat(wrong.body()).contains("do not belong together");
        assertThat(unknown.body().replace("bob@", "ada@")).isEqualTo(wrong.body());
    }

    @Test
    void tenWrongTriesCloseAnAddressForAWhile() {
        SERVER.givenPerson(school, "ada", Role.STUDENT);
        Map<String, String> wrong =
                Map.of("email", "ada@" + school.code() + ".example", "password", "no");
        Map<String, String> right =
                Map.of(
                        "email",
                        "ada@" + school.code() + ".example",
                        "password",
                        TestServer.PASSWORD);
        var stranger = SERVER.stranger(school);
        for (int i = 0; i < 10; i++) {
            stranger.post("/login", wrong);
        }

        assertThat(stranger.post("/login", right).statusCode()).isEqualTo(429);
        SERVER.passes(Duration.ofMinutes(16));
        assertThat(stranger.post("/login", right).statusCode()).isEqualTo(302);
    }

    @Test
    void nobodyStaysInForMoreThanTwelveHours() {
        SERVER.givenPerson(school, "ada", Role.STUDENT);
        var ada = SERVER.logIn(school, "ada");
        assertThat(ada.get("/account").statusCode()).isEqualTo(200);

        SERVER.passes(Duration.ofHours(12).plusSeconds(1));

        var later = ada.get("/account");
        assertThat(later.statusCode()).isEqualTo(302);
        assertThat(later.headers().firstValue("Location").orElseThrow()).contains("/login?next=");
    }

    @Test
    void loggingOutEndsTheSessionAndNotOnlyTheCookie() {
        SERVER.givenPerson(school, "ada", Role.STUDENT);
        var ada = SERVER.logIn(school, "ada");

        assertThat(ada.post("/logout", Map.of()).statusCode()).isEqualTo(302);

        assertThat(ada.get("/account").statusCode()).isEqualTo(302);
    }

    @Test
    void aFormFromElsewhereChangesNothing() {
        SERVER.givenPerson(school, "ada", Role.STUDENT);
        var ada = SERVER.logIn(school, "ada");
        var noToken = ada.post("/logout", Map.of("csrf", "0".repeat(64)));
        var foreign =
                ada.send(
                        ada.request("/" + school.code() + "/logout")
                                .header("Origin", "https://elsewhere.example")
                                .header("Content-Type", "application/x-www-form-urlencoded")
                                .POST(
                                        HttpRequest.BodyPublishers.ofString(
                                                "csrf=" + ada.formToken()))
                                .build());

        assertThat(noToken.statusCode()).isEqualTo(403);
        assertThat(foreign.statusCode()).isEqualTo(403);
        assertThat(ada.get("/account").statusCode()).isEqualTo(200);
    }

    @Test
    void aSessionOfOneSchoolIsNothingInAnother() {
        School other = SERVER.givenSchool("o" + TestServer.newId().toString().substring(0, 8));
        SERVER.givenPerson(school, "ada", Role.STUDENT);
        String token = SERVER.token(school, "ada");
        var stranger = SERVER.stranger(other);

        var answer =
                stranger.send(
                        stranger.request("/" + other.code() + "/account")
                                .header(
                                        "Cookie",
                                        "__Host-groundline-"
                                                + other.code()
                                                + "="
                                                + other.code()
                                                + "."
                                                + token)
                                .GET()
                                .build());

        assertThat(answer.statusCode()).isEqualTo(302);
    }

    @Test
    void everyAnswerForbidsInlineScriptsFramesAndCaching() {
        var headers = SERVER.stranger(school).get("/login").headers();

        assertThat(headers.firstValue("Content-Security-Policy").orElseThrow())
                .contains("default-src 'none'")
                .contains("script-src 'self'")
                .contains("frame-ancestors 'none'")
                .doesNotContain("unsafe");
        assertThat(headers.firstValue("Cache-Control")).contains("no-store");
        assertThat(headers.firstValue("X-Content-Type-Options")).contains("nosniff");
    }

    @Test
    void aSetUpLinkMakesOneSchoolAndNoSecond() {
        String token = SERVER.doors().schools().newSetUpToken();
        String code = "n" + TestServer.newId().toString().substring(0, 8);
        var stranger = SERVER.stranger(school);

        var first = stranger.send(setUp(stranger, token, code));
        var second = stranger.send(setUp(stranger, token, code + "x"));

        assertThat(first.statusCode()).isEqualTo(302);
        assertThat(SERVER.doors().schools().findSchool(code)).isPresent();
        assertThat(second.statusCode()).isEqualTo(404);
        assertThat(SERVER.doors().schools().findSchool(code + "x")).isEmpty();
    }

    private static HttpRequest setUp(TestServer.Browser browser, String token, String code) {
        String form =
                "code="
                        + code
                        + "&name=New&zone=Europe/Vienna&givenName=Eva&familyName=Chief&email=eva@new.example&password="
                        + TestServer.PASSWORD.replace(' ', '+');
        return browser.request("/set-up/" + token)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build();
    }

    @Test
    void aRequestTooLargeIsRefusedAndAnUnknownFieldNamed() {
        var stranger = SERVER.stranger(school);

        assertThat(
                        stranger.post(
                                        "/login",
                                        Map.of("email", "x".repeat(80_000), "password", "p"))
                                .statusCode())
                .isEqualTo(413);
        var unknown =
                stranger.post("/login", Map.of("email", "a@b", "password", "p", "admin", "true"));
        assertThat(unknown.statusCode()).isEqualTo(400);
        assertThat(unknown.body()).contains("not known here: admin");
    }
}
