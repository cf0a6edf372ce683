package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.database.SubjectId;
import org.groundline.school.Role;
import org.groundline.web.TestServer;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/// Rates, people, intakes, policy.
final class SchoolWalk {
    private final TaughtSchool taught;
    private final ApiClient stranger;
    private final ApiClient cleo;

    SchoolWalk(TaughtSchool taught, ApiClient stranger) {
        this.taught = taught;
        this.stranger = stranger;
        this.cleo = stranger.as(taught.school, "cleo");
    }

    void all() {
        people();
        authorisation();
        intakes();
        policy();
        rates();
    }

    private void people() {
        Map<String, Object> bo =
                Map.of(
                        "givenName",
                        "Bo",
                        "familyName",
                        "Finch",
                        "email",
                        "bo@" + taught.school.code() + ".example",
                        "password",
                        TestServer.PASSWORD,
                        "roles",
                        List.of("student"));
        ApiAnswer entered = cleo.post("/people", bo);

        assertThat(entered.status()).isEqualTo(201);
        assertThat(cleo.post("/people", bo).status()).isEqualTo(409);
        assertThat(cleo.get("/people").at("/people").findValuesAsText("subject"))
                .contains(entered.text("/subject"));
        assertThat(stranger.as(taught.school, "bo").get("/me").text("/person/familyName"))
                .isEqualTo("Finch");
    }

    private void authorisation() {
        String path = "/people/" + taught.ada.value() + "/authorisations";
        Map<String, Object> wish =
                new HashMap<>(
                        Map.of(
                                "number", "T-2",
                                "launchMethods", List.of("foot", "winch"),
                                "issuer", "Test office",
                                "validFrom", "2027-01-01",
                                "validUntil", "2029-12-31"));

        assertThat(cleo.post(path, wish).text("/discipline")).isEqualTo("paraglider");
        wish.put("validUntil", "2026-12-31");
        assertThat(cleo.post(path, wish).text("/errors/0/field")).isEqualTo("validUntil");
        wish.put("launchMethods", List.of("catapult"));
        assertThat(cleo.post(path, wish).text("/errors/0/field")).isEqualTo("launchMethods");
        wish.put("launchMethods", List.of(List.of("foot")));
        assertThat(cleo.post(path, wish).text("/errors/0/field")).isEqualTo("/launchMethods/0");
    }

    private void intakes() {
        Map<String, String> autumn = Map.of("name", "Autumn", "startsOn", "2027-09-01");
        ApiAnswer begun = cleo.post("/intakes", autumn);
        String member = "/intakes/" + begun.text("/intake") + "/members/" + taught.ada.value();

        assertThat(begun.status()).isEqualTo(201);
        assertThat(cleo.post("/intakes", autumn).status()).isEqualTo(409);
        assertThat(cleo.put(member).status()).isEqualTo(204);
        assertThat(cleo.put(member).status()).isEqualTo(204);
        assertThat(cleo.get("/board?intake=" + begun.text("/intake")).at("/students")).hasSize(1);
        assertThat(cleo.get("/intakes").at("/intakes")).hasSize(2);
    }

    private void policy() {
        ApiAnswer now = cleo.get("/policy");
        ApiClient current = cleo.with("If-Match", now.header("ETag"));
        Map<String, Object> stricter = rules("80.5");

        assertThat(now.text("/passMarkPercent")).isEqualTo("75");
        assertThat(cleo.put("/policy", stricter).status()).isEqualTo(428);
        ApiAnswer changed = current.put("/policy", stricter);
        assertThat(changed.text("/passMarkPercent")).isEqualTo("80.5");
        assertThat(changed.header("ETag")).isEqualTo("\"2\"");
        assertThat(current.put("/policy", stricter).status()).isEqualTo(412);
        assertThat(cleo.with("If-None-Match", "\"2\"").get("/policy").status()).isEqualTo(304);
        assertThat(cleo.with("If-Match", "2").put("/policy", stricter).status()).isEqualTo(400);
        assertThat(cleo.with("If-Match", "W/\"2\"").put("/policy", stricter).status())
                .isEqualTo(412);
        assertThat(cleo.with("If-Match", "*").put("/policy", rules("75")).status()).isEqualTo(200);
    }

    private static Map<String, Object> rules(String passMark) {
        return Map.of(
                "passMarkPercent", passMark,
                "topicItems", 10,
                "numericSharePercent", 15,
                "studentsToSpeak", 5);
    }

    private void rates() {
        assertThat(cleo.get("/rates").text("/topics/0/kind")).isEqualTo("silent");
        SubjectId[] students =
                java.util.stream.Stream.of("dan", "eve", "fay", "gus", "hal")
                        .map(name -> taught.server.givenPerson(taught.school, name, Role.STUDENT))
                        .toArray(SubjectId[]::new);
        UUID summer = taught.server.givenIntake(taught.school, "Summer", students).id();
        ApiAnswer opening =
                cleo.post(
                        "/openings",
                        Map.of("module", "SAF", "intake", summer, "windowMinutes", 60));
        for (String name : List.of("dan", "eve", "fay", "gus", "hal")) {
            ApiClient student = stranger.as(taught.school, name);
            UUID sitting =
                    student.post("/openings/" + opening.text("/opening") + "/sittings")
                            .id("/sitting");
            student.post("/sittings/" + sitting + "/hand-in");
        }
        ApiAnswer rates = cleo.get("/rates?intake=" + summer);

        assertThat(rates.at("/topics").findValuesAsText("kind")).contains("reached", "silent");
        assertThat(rates.at("/topics").findValuesAsText("sharePercent")).contains("0");
        assertThat(rates.at("/topics").findValuesAsText("highPercent").get(0)).startsWith("43.4");
    }
}
