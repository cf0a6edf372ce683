package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;

import org.groundline.web.TestServer;

import java.time.Duration;
import java.util.Map;
import java.util.UUID;

/// The board, a student's record, and everything up to a sign-off and its reversal.
final class TrainingWalk {
    private final TaughtSchool taught;
    private final ApiClient iris;
    private final ApiClient ada;
    private final String student;
    private final String self;

    TrainingWalk(TaughtSchool taught, ApiClient stranger) {
        this.taught = taught;
        this.iris = stranger.as(taught.school, "iris");
        this.ada = stranger.as(taught.school, "ada");
        this.student = "/students/" + taught.ada.value();
        this.self = "/students/" + taught.iris.value();
    }

    void all() {
        UUID sitting = taught.givenSitting(iris, ada, "AER");
        assertThat(stateOf("AER")).isEqualTo("sitting");
        taught.answerAll(ada, sitting, 1);
        ada.post("/sittings/" + sitting + "/hand-in");
        assertThat(stateOf("AER")).isEqualTo("passed");
        debrief();
        demonstrations();
        ApiAnswer signed = signOff();
        reversal(signed.text("/modules/1/signOffs/0/signOff"));
        guesses();
        board();
    }

    private String stateOf(String module) {
        for (JsonNode each : iris.get(student).at("/modules")) {
            if (each.get("module").asText().equals(module)) {
                return each.at("/state/kind").asText();
            }
        }
        throw new AssertionError("no module " + module);
    }

    private ApiClient upToDate() {
        return iris.with("If-Match", iris.get(student).header("ETag"));
    }

    private void debrief() {
        String item = iris.get(student).text("/modules/1/toTalkThrough/0/item");
        Map<String, String> talk =
                Map.of("item", item, "outcome", "explained back", "note", "On her harness.");
        ApiClient before = upToDate();

        assertThat(iris.post(self + "/debriefs", talk).status()).isEqualTo(409);
        ApiAnswer entered = before.post(student + "/debriefs", talk);
        assertThat(entered.status()).isEqualTo(201);
        assertThat(entered.at("/modules/1/toTalkThrough")).isEmpty();
        assertThat(before.post(student + "/debriefs", talk).status()).isEqualTo(412);
    }

    private void demonstrations() {
        ApiClient before = upToDate();
        for (JsonNode shown : iris.get(student).at("/modules/1/demonstrations")) {
            observe(shown.get("demonstration").asText());
        }
        String any = iris.get("/course").at("/modules/0/demonstrations/0/demonstration").asText();
        observe(any);

        assertThat(stateOf("AER")).isEqualTo("ready");
        assertThat(before.post(student + "/demonstrations", shown(any)).status()).isEqualTo(412);
        assertThat(iris.post(self + "/demonstrations", shown(any)).status()).isEqualTo(409);
    }

    private void observe(String demonstration) {
        ApiAnswer answer = iris.post(student + "/demonstrations", shown(demonstration));
        assertThat(answer.status()).isEqualTo(201);
        assertThat(iris.get(answer.header("Content-Location")).json()).isEqualTo(answer.json());
    }

    private static Map<String, String> shown(String demonstration) {
        return Map.of("demonstration", demonstration);
    }

    private ApiAnswer signOff() {
        Map<String, String> body = Map.of("module", "AER", "password", TestServer.PASSWORD);
        ApiClient before = upToDate();

        assertThat(iris.post(student + "/sign-offs", body).status()).isEqualTo(428);
        assertThat(
                        before.post(
                                        student + "/sign-offs",
                                        Map.of("module", "SAF", "password", TestServer.PASSWORD))
                                .status())
                .isEqualTo(409);
        ApiAnswer signed = before.post(student + "/sign-offs", body);
        assertThat(signed.status()).isEqualTo(201);
        assertThat(signed.text("/modules/1/state/kind")).isEqualTo("signed-off");
        assertThat(signed.text("/modules/1/signOffs/0/signedBy/name")).isEqualTo("iris Person");
        assertThat(before.post(student + "/sign-offs", body).status()).isEqualTo(412);
        assertThat(signed.header("ETag")).isEqualTo(iris.get(student).header("ETag"));
        assertThat(iris.with("If-None-Match", signed.header("ETag")).get(student).status())
                .isEqualTo(304);
        return signed;
    }

    private void reversal(String signOff) {
        String path = student + "/sign-offs/" + signOff + "/reversal";
        var body = Map.of("reason", "Seen on the wrong harness.", "password", TestServer.PASSWORD);
        ApiClient before = upToDate();

        assertThat(iris.post(path, body).status()).isEqualTo(428);
        ApiAnswer reversed = before.post(path, body);
        assertThat(reversed.status()).isEqualTo(201);
        assertThat(reversed.text("/modules/1/signOffs/0/reversal/reason"))
                .isEqualTo("Seen on the wrong harness.");
        assertThat(before.post(path, body).status()).isEqualTo(412);
        assertThat(upToDate().post(path, body).status()).isEqualTo(409);
        guess(path, Map.of("reason", "Again.", "password", "a wrong guess"));
    }

    private void guesses() {
        guess(student + "/sign-offs", Map.of("module", "AER", "password", "a wrong guess"));
    }

    private void guess(String path, Map<String, String> body) {
        for (int i = 0; i < 10; i++) {
            assertThat(upToDate().post(path, body).status()).isEqualTo(400);
        }
        assertThat(upToDate().post(path, body).status()).isEqualTo(429);
        taught.server.passes(Duration.ofMinutes(16));
    }

    private void board() {
        assertThat(iris.get("/board").text("/students/0/name")).isEqualTo("ada Person");
        assertThat(iris.get("/board?intake=" + taught.intake.id()).at("/students")).hasSize(1);
        assertThat(iris.get("/board?intake=" + TestServer.newId()).status()).isEqualTo(404);
        assertThat(iris.get("/board?intake=7").status()).isEqualTo(400);
        assertThat(iris.get("/board?intake=&intake=").status()).isEqualTo(400);
    }
}
