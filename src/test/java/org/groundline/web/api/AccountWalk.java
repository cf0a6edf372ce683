package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.groundline.web.TestServer;

import java.time.Duration;
import java.util.Map;

/// Logging in and out, the course, practice.
final class AccountWalk {
    private final TaughtSchool taught;
    private final ApiClient stranger;

    AccountWalk(TaughtSchool taught, ApiClient stranger) {
        this.taught = taught;
        this.stranger = stranger;
    }

    void all() {
        account();
        guesses();
        course();
        practice();
        notChanged("/api/v1/openapi.yaml");
        notChanged("/api/v1/openapi.json");
        theory();
    }

    private void theory() {
        ApiAnswer distance =
                stranger.get(
                        "/api/v1/theory/glide-distance?height=600%20m&ground-speed=23km/h&descent-rate=1.2m/s");
        ApiAnswer list = stranger.get("/api/v1/theory");

        assertThat(distance.status()).isEqualTo(200);
        // 600 m × 23 km/h ÷ 1.2 m/s, by hand
        assertThat(distance.at("/value").asDouble()).isCloseTo(3194.4, within(0.05));
        assertThat(distance.text("/unit")).isEqualTo("m");
        assertThat(list.json().findValuesAsText("name")).contains("glide-distance", "load-factor");
    }

    private void account() {
        var credentials = Map.of("email", email("ada"), "password", TestServer.PASSWORD);
        ApiAnswer session = stranger.post("/sessions", credentials);
        ApiClient ada = stranger.with("Authorization", "bearer " + session.text("/token"));

        assertThat(session.status()).isEqualTo(201);
        assertThat(ada.get("/me").text("/person/email")).isEqualTo(email("ada"));
        assertThat(ada.get("/me").text("/intakes/0/name")).isEqualTo("Spring");
        chooseLanguage(ada);
        assertThat(change(ada, TestServer.PASSWORD, "another long sentence").status())
                .isEqualTo(204);
        assertThat(change(ada, "another long sentence", TestServer.PASSWORD).status())
                .isEqualTo(204);
        assertThat(ada.delete("/sessions/current").status()).isEqualTo(204);
        assertThat(ada.get("/me").status()).isEqualTo(401);
    }

    private static void chooseLanguage(ApiClient ada) {
        assertThat(ada.get("/me").text("/questions/language")).isEqualTo("en");
        assertThat(ada.put("/me/question-language", Map.of("language", "tlh")).status())
                .isEqualTo(400);
        assertThat(ada.put("/me/question-language", Map.of("language", "de")).status())
                .isEqualTo(204);
        assertThat(ada.get("/me").text("/questions/language")).isEqualTo("de");
        assertThat(ada.put("/me/question-language", Map.of("language", "en")).status())
                .isEqualTo(204);
    }

    private void guesses() {
        ApiClient ada = stranger.as(taught.school, "ada");
        for (int i = 0; i < 10; i++) {
            assertThat(change(ada, "a wrong guess", "another long sentence").status())
                    .isEqualTo(400);
            stranger.post("/sessions", Map.of("email", email("ada"), "password", "wrong"));
        }

        assertThat(change(ada, "a wrong guess", "another long sentence").status()).isEqualTo(429);
        assertThat(
                        stranger.post(
                                        "/sessions",
                                        Map.of("email", email("ada"), "password", "wrong"))
                                .status())
                .isEqualTo(429);
        taught.server.passes(Duration.ofMinutes(16));
    }

    private static ApiAnswer change(ApiClient client, String password, String wanted) {
        return client.put("/me/password", Map.of("password", password, "newPassword", wanted));
    }

    private String email(String name) {
        return name + "@" + taught.school.code() + ".example";
    }

    private void course() {
        assertThat(stranger.as(taught.school, "ada").get("/course").text("/modules/0/module"))
                .isEqualTo("EQU");
        notChanged("/course");
        notChanged("/me/record");
    }

    private void notChanged(String path) {
        ApiClient ada = stranger.as(taught.school, "ada");
        String tag = ada.get(path).header("ETag");

        assertThat(ada.with("If-None-Match", "\"x\", W/" + tag).get(path).status()).isEqualTo(304);
        assertThat(ada.with("If-None-Match", "\"x\"").get(path).status()).isEqualTo(200);
    }

    private void practice() {
        ApiClient ada = stranger.as(taught.school, "ada");
        ApiAnswer next = ada.post("/practices", Map.of("topic", "AER-2"));
        String practice = "/practices/" + next.text("/sitting");
        String item = practice + "/items/" + next.text("/item/item");
        var answer =
                taught.answer(next.id("/item/item"), 1, 0, taught.wrong(next.id("/item/item")));
        var other = taught.answer(next.id("/item/item"), 1, 1, taught.right(next.id("/item/item")));
        ApiClient keyed = ada.withKey(TestServer.newId());

        assertThat(ada.get(item).status()).isEqualTo(409);
        assertThat(keyed.post(practice + "/answers", answer).text("/verdict")).isEqualTo("wrong");
        assertThat(keyed.post(practice + "/answers", answer).status()).isEqualTo(200);
        assertThat(keyed.post(practice + "/answers", other).status()).isEqualTo(422);
        assertThat(ada.withKey(TestServer.newId()).post(practice + "/answers", other).status())
                .isEqualTo(409);
        assertThat(ada.get(item).text("/given/answer")).isEqualTo(answer.get("answer"));
        assertThat(ada.get("/me/progress").at("/topics").findValuesAsText("itemsAnswered"))
                .contains("1");
    }
}
