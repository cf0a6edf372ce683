package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;

import org.groundline.web.TestServer;

import java.util.List;
import java.util.Map;
import java.util.UUID;

/// Uses the API alone: whatever is needed is read from its answers.
final class ApiDeeds implements Deeds {
    private final TaughtSchool taught;
    private final ApiClient ada;
    private final ApiClient iris;
    private final ApiClient cleo;
    private final String student;

    ApiDeeds(TaughtSchool taught) {
        this.taught = taught;
        this.ada = taught.api("ada");
        this.iris = taught.api("iris");
        this.cleo = taught.api("cleo");
        this.student = "/students/" + taught.ada.value();
    }

    private static ApiAnswer done(ApiAnswer answer) {
        assertThat(answer.status()).as(answer.body()).isLessThan(300);
        return answer;
    }

    @Override
    public void enterStudent(String name) {
        done(
                cleo.post(
                        "/people",
                        Map.of(
                                "givenName",
                                name,
                                "familyName",
                                "Person",
                                "email",
                                name + "@" + taught.school.code() + ".example",
                                "password",
                                TestServer.PASSWORD,
                                "roles",
                                List.of("student"))));
    }

    @Override
    public void authorise() {
        done(
                cleo.post(
                        "/people/" + taught.iris.value() + "/authorisations",
                        Map.of(
                                "number", "T-2",
                                "launchMethods", List.of("foot", "winch"),
                                "issuer", "Test office",
                                "validFrom", "2027-01-01",
                                "validUntil", "2029-12-31")));
    }

    @Override
    public void beginIntake(String name, String student) {
        String intake =
                done(cleo.post("/intakes", Map.of("name", name, "startsOn", "2027-06-01")))
                        .text("/intake");
        for (JsonNode person : cleo.get("/people").at("/people")) {
            if (person.get("givenName").asText().equals(student)) {
                String member = "/intakes/" + intake + "/members/" + person.get("subject").asText();
                done(cleo.put(member));
                done(cleo.put(member));
            }
        }
    }

    @Override
    public void changePolicy() {
        done(
                cleo.with("If-Match", cleo.get("/policy").header("ETag"))
                        .put(
                                "/policy",
                                Map.of(
                                        "passMarkPercent", "80.5",
                                        "topicItems", 9,
                                        "numericSharePercent", 20,
                                        "studentsToSpeak", 6)));
    }

    @Override
    public void changePassword(String person) {
        done(
                taught.api(person)
                        .put(
                                "/me/password",
                                Map.of(
                                        "password",
                                        TestServer.PASSWORD,
                                        "newPassword",
                                        "another long sentence")));
    }

    @Override
    public void acknowledge(String topic) {
        String brief = "/briefs/" + topic;
        Map<String, Object> version = Map.of("version", done(ada.get(brief)).text("/version"));
        done(ada.post(brief + "/acknowledgements", version));
        done(ada.post(brief + "/acknowledgements", version));
    }

    @Override
    public Seen practise(String topic) {
        ApiAnswer next = done(ada.post("/practices", Map.of("topic", topic)));
        return new Seen(next.id("/sitting"), next.at("/seat").asInt(), next.id("/item/item"));
    }

    @Override
    public void answerPractice(Seen seen, UUID clientId, String answer) {
        send("/practices/", seen, clientId, 0, answer);
    }

    private void send(String root, Seen seen, UUID clientId, int sequence, String answer) {
        done(
                ada.withKey(clientId)
                        .post(
                                root + seen.sitting() + "/answers",
                                taught.answer(seen.item(), seen.seat(), sequence, answer)));
    }

    @Override
    public void openTest(String module) {
        String intake = iris.get("/intakes").text("/intakes/0/intake");
        done(
                iris.post(
                        "/openings",
                        Map.of(
                                "module",
                                module,
                                "intake",
                                intake,
                                "windowMinutes",
                                60,
                                "place",
                                "Hut")));
    }

    @Override
    public List<Seen> begin() {
        String begin =
                "/openings/" + ada.get("/me/openings").text("/openings/0/opening") + "/sittings";
        done(ada.post(begin));
        ApiAnswer sheet = done(ada.get(done(ada.post(begin)).header("Location")));
        return TaughtSchool.items(sheet).stream()
                .map(item -> new Seen(sheet.id("/sitting"), sheet.at("/seat").asInt(), item))
                .toList();
    }

    @Override
    public void answer(Seen seen, UUID clientId, int sequence, String answer) {
        send("/sittings/", seen, clientId, sequence, answer);
    }

    @Override
    public void flag(Seen seen, boolean flagged) {
        String path = "/sittings/" + seen.sitting() + "/flags/" + seen.item();
        done(flagged ? ada.put(path) : ada.delete(path));
    }

    @Override
    public void handIn(UUID sitting) {
        done(ada.post("/sittings/" + sitting + "/hand-in"));
    }

    @Override
    public void debrief(UUID item, String outcome, String note) {
        done(
                iris.post(
                        student + "/debriefs",
                        Map.of("item", item, "outcome", outcome, "note", note)));
    }

    @Override
    public void demonstrate(String demonstration) {
        done(iris.post(student + "/demonstrations", Map.of("demonstration", demonstration)));
    }

    private ApiClient upToDate() {
        return iris.with("If-Match", iris.get(student).header("ETag"));
    }

    @Override
    public void signOff(String module) {
        done(
                upToDate()
                        .post(
                                student + "/sign-offs",
                                Map.of("module", module, "password", TestServer.PASSWORD)));
    }

    @Override
    public void reverse(String module, String reason) {
        for (JsonNode each : iris.get(student).at("/modules")) {
            if (each.get("module").asText().equals(module)) {
                String signOff = each.at("/signOffs/0/signOff").asText();
                done(
                        upToDate()
                                .post(
                                        student + "/sign-offs/" + signOff + "/reversal",
                                        Map.of("reason", reason, "password", TestServer.PASSWORD)));
            }
        }
    }
}
