package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;

import org.groundline.school.PolicyRules;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.UUID;

/// What a program is told of a result.
class ResultTest {
    private static final TestServer SERVER = TestServer.start();
    private final TaughtSchool taught = new TaughtSchool(SERVER);
    private final ApiClient ada = taught.api("ada");
    private final ApiClient iris = taught.api("iris");

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private UUID givenResult(int missed) {
        UUID sitting = taught.givenSitting(iris, ada, "EQU");
        taught.answerAll(ada, sitting, missed);
        ada.post("/sittings/" + sitting + "/hand-in");
        return sitting;
    }

    private static String exactly(JsonNode marks, int decimals) {
        return new BigDecimal(100)
                .multiply(marks.get("marksHundredths").decimalValue())
                .divide(marks.get("possibleHundredths").decimalValue(), decimals, RoundingMode.DOWN)
                .toPlainString();
    }

    /// A run under another rule, as a later program would leave it: the server never edits one.
    @Test
    void theVersionOfTheRunThatCountsIsTold() {
        UUID sitting = givenResult(0);
        int before = ada.get("/sittings/" + sitting + "/result").at("/scoringVersion").asInt();
        UUID run = TestServer.newId();
        taught.execute(
                """
                insert into scoring_run
                select school_id, ?, sitting_id, 7, now(), 're-marked', hundredths, possible, passed
                from scoring_run where sitting_id = ?
                """,
                run,
                sitting);
        taught.execute("update result set current = ? where sitting_id = ?", run, sitting);

        assertThat(before).isEqualTo(1);
        assertThat(ada.get("/sittings/" + sitting + "/result").at("/scoringVersion").asInt())
                .isEqualTo(7);
    }

    @ParameterizedTest
    @CsvSource({"7500, 75, 0", "7550, 75.5, 1", "7533, 75.33, 2"})
    void marksAreToldWithTheDecimalsOfThePassMarkOfTheirTime(
            int passMark, String told, int decimals) {
        var policies = taught.server.doors().policies();
        var cleo = taught.server.actor(taught.school, "cleo");
        policies.change(cleo, 1, new PolicyRules(passMark, 10, 15, 5));
        JsonNode result = ada.get("/sittings/" + givenResult(1) + "/result").json();
        policies.change(cleo, 2, new PolicyRules(6_010, 10, 15, 5));
        JsonNode attempt =
                iris.get("/students/" + taught.ada.value()).json().findParent("gainedPercent");

        assertThat(result.get("passMarkPercent").asText()).isEqualTo(told);
        assertThat(result.get("gainedPercent").asText()).isEqualTo(exactly(result, decimals));
        assertThat(result.get("topics"))
                .allSatisfy(
                        topic ->
                                assertThat(topic.get("gainedPercent").asText())
                                        .isEqualTo(exactly(topic, decimals)));
        assertThat(attempt.get("passMarkPercent").asText()).isEqualTo(told);
        assertThat(attempt.get("gainedPercent").asText()).isEqualTo(exactly(result, decimals));
    }
}
