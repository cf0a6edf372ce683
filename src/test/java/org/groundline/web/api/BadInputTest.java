package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.school.Role;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/// Whatever is sent, it gets a clear error, and nothing is lost or counted twice.
class BadInputTest {
    private static final TestServer SERVER = TestServer.start();
    private static final TaughtSchool TAUGHT = new TaughtSchool(SERVER);
    private static final ApiClient ADA = TAUGHT.api("ada");
    private static final ApiClient IRIS = TAUGHT.api("iris");
    private static UUID sitting = UUID.randomUUID();
    private static UUID number = UUID.randomUUID();
    private static List<UUID> items = List.of();
    private static String answers = "";

    @BeforeAll
    static void begin() {
        sitting = TAUGHT.givenSitting(IRIS, ADA, "AER");
        answers = "/sittings/" + sitting + "/answers";
        number = TAUGHT.givenNumber(sitting);
        items = TaughtSchool.items(ADA.get("/sittings/" + sitting));
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private static ApiAnswer sendText(String json) {
        return ADA.withKey(TestServer.newId()).send("POST", answers, Optional.of(json));
    }

    private static Map<String, Object> answer(String text) {
        return new HashMap<>(TAUGHT.answer(choice(), 1, 0, text));
    }

    private static UUID choice() {
        return items.get(0);
    }

    private static int rows() {
        return Integer.parseInt(
                TAUGHT.one("select count(*) from answer where sitting_id = ?", sitting));
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "seat     | 'one'",
                "seat     | '1'",
                "seat     | 1.0",
                "seat     | 1e999",
                "seat     | -1e999",
                "seat     | NaN",
                "seat     | Infinity",
                "seat     | -Infinity",
                "seat     | +1",
                "seat     | 01",
                "seat     | 99999999999",
                "seat     | 9999999999999999999999999999999999999999",
                "seat     | {}",
                "seat     | -1",
                "seat     | true",
                "seat     | null",
                "sequence | -1",
                "sequence | 2000000",
                "answer   | 5",
                "answer   | true",
                "answer   | null",
                "answer   | ['A']",
                "answer   | 'A\\u0000'",
                "answer   | '\\ud800'",
                "answer   | ''",
                "answer   | '   '",
                "answer   | 'E'",
                "answer   | 'AB'",
                "answer   | 'a'",
                "item     | 'no id'",
                "item     | '1-1-1-1-1'",
                "item     | 7",
                "clientAt | 1234567",
                "clientAt | '2027-05-01'",
                "clientAt | '+999999999-12-31T23:59:59Z'",
                "clientAt | '2027-02-30T00:00:00Z'"
            })
    void aFieldOfTheWrongKindIsRefusedByName(String field, String value) {
        Map<String, String> raw = new HashMap<>();
        answer("A").forEach((name, text) -> raw.put(name, ApiClient.json(text)));
        raw.put(field.strip(), value.strip().replace('\'', '"'));

        ApiAnswer answer = sendText(object(raw));

        assertThat(answer.status()).as(answer.body()).isEqualTo(400);
        String blamed = field.strip().equals("sequence") && value.contains("-") ? "seat" : field;
        assertThat(answer.text("/errors/0/field")).isEqualTo(blamed.strip());
    }

    private static String object(Map<String, String> raw) {
        return raw.entrySet().stream()
                .map(e -> "\"" + e.getKey() + "\":" + e.getValue())
                .collect(Collectors.joining(",", "{", "}"));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {"NaN", "1e999", "Infinity", "-1e400", "0x1F", "12 parsecs", "1/0", "--5"})
    void anAbsurdNumberIsRefusedAndSaidWhy(String typed) {
        ApiAnswer answer =
                ADA.withKey(TestServer.newId()).post(answers, TAUGHT.answer(number, 1, 0, typed));

        assertThat(answer.status()).as(answer.body()).isEqualTo(400);
        assertThat(answer.text("/errors/0/field")).isEqualTo("answer");
        assertThat(answer.text("/detail")).isNotEmpty();
    }

    @Test
    void tenKilobytesAreNoAnswer() {
        for (UUID item : List.of(choice(), number)) {
            ApiAnswer answer =
                    ADA.withKey(TestServer.newId())
                            .post(answers, TAUGHT.answer(item, 1, 0, "9".repeat(10_240)));
            assertThat(answer.status()).isEqualTo(400);
            assertThat(answer.text("/errors/0/field")).isEqualTo("answer");
        }
    }

    @Test
    void anUnknownQuestionIsNotFound() {
        UUID elsewhere = TaughtSchool.items(otherSitting()).get(0);

        for (UUID item : List.of(TestServer.newId(), elsewhere)) {
            ApiAnswer answer =
                    ADA.withKey(TestServer.newId()).post(answers, TAUGHT.answer(item, 1, 0, "A"));
            assertThat(answer.status()).isEqualTo(404);
        }
        assertThat(ADA.get("/sittings/7").status()).isEqualTo(404);
        assertThat(ADA.get("/sittings/" + TestServer.newId()).status()).isEqualTo(404);
        assertThat(ADA.post("/practices", Map.of("topic", "XYZ-1")).status()).isEqualTo(404);
    }

    private static ApiAnswer otherSitting() {
        UUID other = TAUGHT.givenSitting(IRIS, ADA, "EQU");
        return ADA.get("/sittings/" + other);
    }

    @Test
    void anUnknownPersonOrIntakeIsNotFound() {
        ApiClient cleo = TAUGHT.api("cleo");
        String nobody = TestServer.newId().toString();
        String nowhere = TestServer.newId().toString();
        var authorisation =
                Map.of(
                        "number", "T-1",
                        "launchMethods", List.of("foot"),
                        "issuer", "Test office",
                        "validFrom", "2027-01-01",
                        "validUntil", "2028-01-01");

        assertThat(
                        cleo.put("/intakes/" + nowhere + "/members/" + TAUGHT.ada.value())
                                .text("/detail"))
                .isEqualTo("The school has no such intake.");
        assertThat(
                        cleo.put("/intakes/" + TAUGHT.intake.id() + "/members/" + nobody)
                                .text("/detail"))
                .isEqualTo("There is no such person in this school.");
        assertThat(
                        cleo.post("/people/" + nobody + "/authorisations", authorisation)
                                .text("/detail"))
                .isEqualTo("There is no such person in this school.");
        assertThat(cleo.put("/intakes/7/members/" + nobody).status()).isEqualTo(404);
    }

    @Test
    void anotherStudentsSittingTakesNoAnswer() {
        SERVER.givenIntake(
                TAUGHT.school, "Other", SERVER.givenPerson(TAUGHT.school, "bob", Role.STUDENT));
        ApiClient bob = TAUGHT.api("bob");
        int before = rows();

        assertThat(bob.withKey(TestServer.newId()).post(answers, answer("A")).status())
                .isEqualTo(404);
        assertThat(bob.get("/sittings/" + sitting).status()).isEqualTo(404);
        assertThat(bob.post("/sittings/" + sitting + "/hand-in").status()).isEqualTo(404);
        assertThat(rows()).isEqualTo(before);
    }

    @Test
    void aSittingThatIsHandedInOrOverTakesNoAnswer() {
        UUID handedIn = TAUGHT.givenSitting(IRIS, ADA, "SAF");
        UUID first = TaughtSchool.items(ADA.get("/sittings/" + handedIn)).get(0);
        var late = TAUGHT.answer(first, 1, 0, TAUGHT.right(first));
        ADA.post("/sittings/" + handedIn + "/hand-in");
        ApiAnswer closed =
                ADA.withKey(TestServer.newId()).post("/sittings/" + handedIn + "/answers", late);

        assertThat(closed.status()).isEqualTo(409);
        assertThat(closed.text("/detail")).contains("handed in already");
        assertThat(TAUGHT.one("select count(*) from answer where sitting_id = ?", handedIn))
                .isEqualTo("0");
    }

    @Test
    void anAnswerAfterTheTimeIsNotTakenAndTheClockHandsIn() {
        var school = new TaughtSchool(SERVER);
        ApiClient ada = school.api("ada");
        UUID timed = school.givenSitting(school.api("iris"), ada, "SAF");
        UUID first = TaughtSchool.items(ada.get("/sittings/" + timed)).get(0);
        String path = "/sittings/" + timed;
        SERVER.passes(Duration.ofMinutes(90));
        var late = school.answer(first, 1, 0, school.right(first));

        assertThat(ada.withKey(TestServer.newId()).post(path + "/answers", late).status())
                .isEqualTo(409);
        assertThat(ada.post(path + "/hand-in").text("/handedInBy")).isEqualTo("clock");
        assertThat(ada.get(path + "/result").at("/marksHundredths").asInt()).isZero();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "2d0b97f3-9b5f-4b9f-8e4e-4d2a1b5c6d7e",
                "\"2d0b97f3-9b5f-4b9f-8e4e-4d2a1b5c6d7e",
                "\"7\"",
                "\"\"",
                "'2d0b97f3-9b5f-4b9f-8e4e-4d2a1b5c6d7e'",
                "\"2d0b97f3-9b5f-4b9f-8e4e-4d2a1b5c6d7e\", \"x\"",
                "\"2d0b97f3\\-9b5f-4b9f-8e4e-4d2a1b5c6d7e\""
            })
    void aKeyThatIsNoUuidInQuotationMarksIsRefused(String key) {
        ApiAnswer answer = ADA.with("Idempotency-Key", key).post(answers, answer("A"));

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.text("/errors/0/field")).isEqualTo("Idempotency-Key");
        assertThat(ADA.post(answers, answer("A")).text("/errors/0/field"))
                .isEqualTo("Idempotency-Key");
    }

    @Test
    void oneItemAnsweredInTwoTabsAtOnceKeepsBothAndCountsOne() throws Exception {
        UUID item = items.get(2);
        int before = rows();

        List<Integer> statuses =
                atOnce(
                        8,
                        i ->
                                ADA.withKey(TestServer.newId())
                                        .post(
                                                answers,
                                                TAUGHT.answer(item, 1, 0, TAUGHT.right(item)))
                                        .status());

        assertThat(statuses).containsOnly(200);
        assertThat(rows()).isEqualTo(before + 8);
        assertThat(
                        ADA.get("/sittings/" + sitting).at("/items").findParents("given").stream()
                                .filter(
                                        line ->
                                                line.at("/item/item")
                                                        .asText()
                                                        .equals(item.toString())))
                .hasSize(1);
    }

    @Test
    void theSameAnswerSentAtOnceIsKeptOnceAndAcknowledgedAlike() throws Exception {
        UUID item = items.get(3);
        int before = rows();
        ApiClient keyed = ADA.withKey(TestServer.newId());
        var answer = TAUGHT.answer(item, 1, 1, TAUGHT.right(item));

        List<String> receipts = atOnce(16, i -> keyed.post(answers, answer).body());

        assertThat(receipts.stream().distinct()).hasSize(1);
        assertThat(rows()).isEqualTo(before + 1);
    }

    @Test
    void sixRequestsAtOnceBeginOnePractice() throws Exception {
        List<String> next = atOnce(6, i -> ADA.post("/practices", Map.of("topic", "EQU-1")).body());

        assertThat(next.stream().distinct()).hasSize(1);
    }

    private static <T> List<T> atOnce(int times, java.util.function.IntFunction<T> work)
            throws Exception {
        var start = new CountDownLatch(1);
        try (ExecutorService threads = Executors.newFixedThreadPool(times)) {
            List<Future<T>> results =
                    IntStream.range(0, times)
                            .mapToObj(
                                    i ->
                                            threads.submit(
                                                    (Callable<T>)
                                                            () -> {
                                                                start.await();
                                                                return work.apply(i);
                                                            }))
                            .toList();
            start.countDown();
            List<T> values = new java.util.ArrayList<>();
            for (Future<T> result : results) {
                values.add(result.get());
            }
            return values;
        }
    }

    @Test
    void aSchoolCodeOfNonsenseIsNotFound() {
        for (String code : List.of("nowhere", "KESTREL", "a%20b", "%C3%A4", "x".repeat(300))) {
            assertThat(ADA.at(code).get("/me").status()).as(code).isEqualTo(404);
        }
    }
}
