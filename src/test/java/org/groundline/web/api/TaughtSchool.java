package org.groundline.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import org.groundline.database.SubjectId;
import org.groundline.school.Intake;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.web.TestServer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/// A school with somebody in it — a student, an instructor, a chief instructor, one intake — and
/// what tests do there by the API.
final class TaughtSchool {
    /// What a program is told that gets right or wrong: only tests look into the keys.
    private static final ObjectMapper JSON = new ObjectMapper();

    final TestServer server;
    final School school;
    final SubjectId ada;
    final SubjectId iris;
    final Intake intake;

    TaughtSchool(TestServer server) {
        this.server = server;
        this.school = server.givenSchool("s" + TestServer.newId().toString().substring(0, 8));
        this.ada = server.givenPerson(school, "ada", Role.STUDENT);
        this.iris = server.givenPerson(school, "iris", Role.INSTRUCTOR);
        server.givenPerson(school, "cleo", Role.CHIEF_INSTRUCTOR, Role.INSTRUCTOR);
        this.intake = server.givenIntake(school, "Spring", ada);
    }

    ApiClient stranger() {
        return ApiClient.stranger(server, school);
    }

    /// A new session of a person.
    ApiClient api(String name) {
        return stranger().as(school, name);
    }

    /// Opens the progress test of a module for the intake and has a student begin it.
    UUID givenSitting(ApiClient staff, ApiClient student, String module) {
        ApiAnswer opening =
                staff.post(
                        "/openings",
                        Map.of("module", module, "intake", intake.id(), "windowMinutes", 600));
        return student.post("/openings/" + opening.text("/opening") + "/sittings").id("/sitting");
    }

    /// Answers all items of a sitting rightly, but some of the safety-critical ones.
    ///
    /// @param missed how many safety-critical items to answer wrongly
    void answerAll(ApiClient student, UUID sitting, int missed) {
        JsonNode sheet = student.get("/sittings/" + sitting).json();
        int sequence = sheet.get("nextSequence").asInt();
        int left = missed;
        for (JsonNode line : sheet.get("items")) {
            UUID item = UUID.fromString(line.at("/item/item").asText());
            boolean miss = left > 0 && isSafetyCritical(item);
            left -= miss ? 1 : 0;
            Map<String, ?> answer =
                    Map.of(
                            "item",
                            item,
                            "seat",
                            sheet.get("seat").asInt(),
                            "sequence",
                            sequence++,
                            "answer",
                            miss ? wrong(item) : right(item));
            student.withKey(TestServer.newId()).post("/sittings/" + sitting + "/answers", answer);
        }
    }

    /// The items of a sitting in the order of the paper.
    static List<UUID> items(ApiAnswer sheet) {
        List<UUID> items = new ArrayList<>();
        sheet.at("/items").forEach(i -> items.add(UUID.fromString(i.at("/item/item").asText())));
        return items;
    }

    String right(UUID item) {
        JsonNode key = key(item);
        return key.get(key.get("kind").asText().equals("choice") ? "letter" : "answer").asText();
    }

    String wrong(UUID item) {
        JsonNode key = key(item);
        if (key.get("kind").asText().equals("number")) {
            return "987654";
        }
        return key.get("letter").asText().equals("A") ? "B" : "A";
    }

    /// Adds an item to a paper that asks for a number, whatever the bank holds: 800 m.
    UUID givenNumber(UUID sitting) {
        UUID item = TestServer.newId();
        execute(
                """
                insert into item
                select i.school_id, ?, i.paper_id, 1000, i.question_id, i.question_version, i.module, i.topic,
                       i.objective, i.level, false, 1, '{}', '{"kind": "number", "stem": "How far?", "unit": "m"}',
                       'en'
                from sitting s join item i on i.school_id = s.school_id and i.paper_id = s.paper_id and i.position = 1
                where s.id = ?
                """,
                item,
                sitting);
        execute(
                """
                insert into item_key
                select school_id, id, '{"kind": "number", "answer": "800", "lowest": "790", "highest": "810",
                       "unit": "m", "mistakes": [], "steps": ["8 × 100 m"], "rationale": "It glides 8 to 1.",
                       "sources": ["common practice"]}'
                from item where id = ?
                """,
                item);
        return item;
    }

    private JsonNode key(UUID item) {
        try {
            return JSON.readTree(one("select key::text from item_key where item_id = ?", item));
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    boolean isSafetyCritical(UUID item) {
        return one("select safety_critical::text from item where id = ?", item).equals("true");
    }

    /// The single value that a statement finds in this school.
    String one(String statement, Object... values) {
        return server.database()
                .inSchool(
                        school.id(),
                        tx -> String.valueOf(tx.fetchSingle(statement, values).get(0)));
    }

    /// Runs a statement in this school.
    void execute(String statement, Object... values) {
        server.database().doInSchool(school.id(), tx -> tx.execute(statement, values));
    }

    /// The body of an answer to an item.
    Map<String, Object> answer(UUID item, int seat, int sequence, String text) {
        return Map.of("item", item, "seat", seat, "sequence", sequence, "answer", text);
    }
}
