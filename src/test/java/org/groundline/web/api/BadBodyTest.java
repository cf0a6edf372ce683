package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.web.TestServer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/// A body that cannot be read is refused with the field in which the fault lies, or with the place.
class BadBodyTest {
    private static final TestServer SERVER = TestServer.start();
    private static final TaughtSchool TAUGHT = new TaughtSchool(SERVER);
    private static final ApiClient ADA = TAUGHT.api("ada").withKey(TestServer.newId());
    private static final String ANSWERS = "/sittings/" + TestServer.newId() + "/answers";

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private static ApiAnswer sendText(String json) {
        return ADA.send("POST", ANSWERS, Optional.of(json));
    }

    private static Map<String, Object> answer(String text) {
        return new HashMap<>(TAUGHT.answer(TestServer.newId(), 1, 0, text));
    }

    @ParameterizedTest(name = "{index}")
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "null",
                "\"A\"",
                "NaN",
                "{'answer': NaN}",
                "{'answer': 'A'} {}",
                "{'answer': 'A',}",
                "{answer: 'A'}",
                "{'answer': 'A' /* no */}",
                "\u0000\u0001"
            })
    void aBodyThatIsNotOneJsonObjectIsRefused(String body) {
        ApiAnswer answer = sendText(body.replace('\'', '"'));

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.text("/type")).isEqualTo("urn:groundline:problem:invalid");
    }

    @Test
    void unknownMissingAndRepeatedFieldsAreNamed() {
        Map<String, Object> more = answer("A");
        more.put("mark", 100);
        Map<String, Object> less = answer("A");
        less.remove("seat");
        String twice = ApiClient.json(answer("A")).replaceFirst("\\{", "{\"answer\":\"B\",");

        assertThat(sendText(ApiClient.json(more)).text("/errors/0/field")).isEqualTo("mark");
        assertThat(sendText(ApiClient.json(less)).text("/errors/0/field")).isEqualTo("seat");
        assertThat(sendText(twice).text("/errors/0/field")).isEqualTo("answer");
    }

    @ParameterizedTest(name = "{index}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "answer | {'answer': [@10000 ]@10000 }",
                "answer | {'answer': {'a':@10000 1 }@10000 }",
                "answer | {'answer': [@10000",
                "seat   | {'seat': 9@5000 }",
                "seat   | {'seat': -9@60000 }",
                "seat   | {'seat': 0.9@5000 }",
                "seat   | {'seat': 1e9@5000 }",
                "       | {'x@10000 ': 1}"
            })
    void whatIsTooDeepOrTooLongIsRefusedWithTheFieldItLiesIn(@Nullable String field, String body) {
        ApiAnswer answer = sendText(repeated(body).replace('\'', '"'));

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.text("/detail")).containsAnyOf("too deeply", "too long");
        assertThat(answer.text("/errors/0/field").replaceFirst("^/([a-z]+)/.*", "$1"))
                .isEqualTo(field == null ? "" : field);
    }

    /// The text, with what stands before each `@times ` repeated as often.
    private static String repeated(String text) {
        return Pattern.compile("(\\{'a':|.)@(\\d+) ?")
                .matcher(text)
                .replaceAll(m -> m.group(1).repeat(Integer.parseInt(m.group(2))));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/roles/1      | ['student', 5]",
                "/roles/1      | ['student', null]",
                "/roles/0      | ['\\u0000']",
                "/roles/0      | ['\\q']",
                "/roles/0      | [['student']]",
                "/roles/0/role | [{'role': null}]",
                "/roles/0/a~1b | [{'a/b': 1, 'a/b': 2}]",
                "roles         | ['student', NaN]",
                "roles         | ['student' 'student']",
                "roles         | ['student',]",
                "roles         | 'student'",
                "roles         | {'0': 'student'}"
            })
    void aFaultWithinAFieldIsToldByItsPointer(String field, String roles) {
        String person =
                """
                {"givenName": "Nora", "familyName": "Newcomer", "email": "nora@new.example",
                 "password": "a long enough sentence", "roles": %s}
                """
                        .formatted(roles.replace('\'', '"'));

        ApiAnswer answer = TAUGHT.api("cleo").send("POST", "/people", Optional.of(person));

        assertThat(answer.status()).as(answer.body()).isEqualTo(400);
        assertThat(answer.text("/errors/0/field")).isEqualTo(field);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{'answer': 'A'} {}           | line 1, column 17",
                "{'answer': 'A'}\\n\\n NaN      | line 3, column 5",
                "{'answer': 'A',}             | line 1, column 16",
                "{answer: 'A'}                | line 1, column 2",
                "{'seat': 0x1F}               | line 1, column 11",
                "{'seat': 1\\n 'answer': 'A'}  | line 2, column 2"
            })
    void aFaultInNoFieldIsToldByLineAndColumn(String body, String place) {
        ApiAnswer answer = sendText(body.replace('\'', '"').replace("\\n", "\n"));

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.text("/detail")).contains(place);
        assertThat(answer.at("/errors").isMissingNode()).isTrue();
    }

    @Test
    void aBodyInAnotherEncodingIsRefused() {
        for (Charset other : List.of(StandardCharsets.UTF_16, StandardCharsets.ISO_8859_1)) {
            ApiAnswer answer =
                    ADA.sendBytes("POST", ANSWERS, "{\"answer\": \"ü\"}".getBytes(other));

            assertThat(answer.status()).isEqualTo(400);
            assertThat(answer.text("/detail")).contains("UTF-8");
        }
    }
}
