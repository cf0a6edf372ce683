package org.groundline.web.student;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.web.student.SmallTest.choosing;
import static org.groundline.web.student.SmallTest.form;

import org.groundline.school.PolicyRules;
import org.groundline.web.TestServer;
import org.groundline.web.TestServer.Browser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Map;
import java.util.UUID;

/// What the page of a result says of the rules and the marking behind it.
class ResultPagesTest {
    private static final TestServer SERVER = startServer();

    private final SmallTest test = SmallTest.open(SERVER);
    private final Browser ada = test.ada();

    private static TestServer startServer() {
        try {
            return TestServer.startWith(SmallTest.bank(Files.createTempDirectory("bank")));
        } catch (IOException e) {
            throw new IllegalStateException("no folder for the small bank", e);
        }
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    /// Ada's sitting with one of its two items right.
    private String givenHalfRight() {
        String sitting = test.begin(ada);
        PageForm choice = form(ada, sitting, choosing(ada, sitting));
        ada.post(sitting + "/answers", choice.with("answer", choice.letterOf(SmallTest.RIGHT)));
        ada.post(sitting + "/hand-in", Map.of("sure", "yes"));
        return sitting;
    }

    private String page(String address) {
        return ada.get(address).body().replaceAll("\\s+", " ");
    }

    @Test
    void marksHaveTheDecimalsOfTheirPassMark() {
        var ruth = SERVER.actor(test.school(), "ruth");
        SERVER.doors().policies().change(ruth, 2, new PolicyRules(7_533, 10, 100, 5));
        String sitting = givenHalfRight();

        assertThat(page(sitting + "/result"))
                .contains("1 of 2, 50.00\u202F%. The pass mark is 75.33\u202F%:");
        assertThat(page("/course")).contains("1 of 2, 50.00\u202F%");
    }

    /// A run under another rule, as a later program would leave it: the server never edits one.
    @Test
    void theVersionOfTheRunThatCountsIsShown() {
        String sitting = givenHalfRight();
        String before = page(sitting + "/result");
        remark(UUID.fromString(sitting.substring("/sittings/".length())), 7);

        assertThat(before).contains("Scoring version 1");
        assertThat(page(sitting + "/result")).contains("Scoring version 7");
    }

    private void remark(UUID sitting, int version) {
        UUID run = TestServer.newId();
        execute(
                """
                insert into scoring_run
                select school_id, ?, sitting_id, ?, now(), 're-marked', hundredths, possible, passed
                from scoring_run where sitting_id = ?
                """,
                run,
                version,
                sitting);
        execute("update result set current = ? where sitting_id = ?", run, sitting);
    }

    private void execute(String statement, Object... values) {
        SERVER.database().doInSchool(test.school().id(), tx -> tx.execute(statement, values));
    }
}
