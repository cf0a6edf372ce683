package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.web.TestServer;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteListener;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.io.Serial;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Stream;

/// Nothing about a key is given out, or even read, before the rules allow it.
class SecrecyTest {
    private static final StatementLog LOG = new StatementLog();
    private static final TestServer SERVER = TestServer.start(LOG);

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private static final class StatementLog implements ExecuteListener {
        @Serial private static final long serialVersionUID = 1L;

        private final transient Queue<String> statements = new ConcurrentLinkedQueue<>();

        @Override
        public void executeStart(ExecuteContext run) {
            statements.add(String.valueOf(run.sql()).toLowerCase(Locale.ROOT));
        }

        Stream<String> readingKeys() {
            return statements.stream()
                    .filter(s -> s.contains("item_key") && !s.startsWith("insert into"));
        }
    }

    @Test
    void noStatementReadsAKeyBeforeTheHandIn() {
        var taught = new TaughtSchool(SERVER);
        ApiClient ada = taught.api("ada");
        UUID sitting = taught.givenSitting(taught.api("iris"), ada, "EQU");
        String path = "/sittings/" + sitting;
        List<UUID> items = TaughtSchool.items(ada.get(path));
        List<String> right = items.stream().map(taught::right).toList();
        LOG.statements.clear();

        for (int i = 0; i < items.size(); i++) {
            ada.withKey(TestServer.newId())
                    .post(path + "/answers", taught.answer(items.get(i), 1, i, right.get(i)));
        }
        ada.put(path + "/flags/" + items.get(0));
        ada.get(path);
        ada.get(path + "/result");
        ada.get("/practices/" + sitting + "/items/" + items.get(0));
        ada.get("/me/record");
        ada.get("/me/openings");
        assertThat(LOG.statements).hasSizeGreaterThan(2 * items.size());
        assertThat(LOG.readingKeys()).isEmpty();

        ada.post(path + "/hand-in");
        assertThat(LOG.readingKeys()).isNotEmpty();
    }

    @Test
    void noAnswerBeforeTheHandInHoldsAnythingOfAKey() {
        var taught = new TaughtSchool(SERVER);
        ApiClient ada = taught.api("ada");
        UUID sitting = taught.givenSitting(taught.api("iris"), ada, "SAF");
        String path = "/sittings/" + sitting;
        UUID item = TaughtSchool.items(ada.get(path)).get(0);
        String rationale =
                taught.one("select key ->> 'rationale' from item_key where item_id = ?", item);

        Stream<ApiAnswer> before =
                Stream.of(
                        ada.get(path),
                        ada.withKey(TestServer.newId())
                                .post(
                                        path + "/answers",
                                        taught.answer(item, 1, 0, taught.wrong(item))),
                        ada.get(path + "/result"),
                        ada.get("/practices/" + sitting + "/items/" + item),
                        ada.get("/me/record"));

        assertThat(before)
                .allSatisfy(
                        answer ->
                                assertThat(answer.body())
                                        .doesNotContain("rationale", "misconception", "belief")
                                        .doesNotContain(
                                                rationale.substring(
                                                        0, Math.min(40, rationale.length()))));
        ada.post(path + "/hand-in");
        assertThat(ada.get(path + "/result").text("/items/0/rationale")).isEqualTo(rationale);
    }

    @Test
    void aRightAndAWrongAnswerAreAcknowledgedAlike() {
        var taught = new TaughtSchool(SERVER);
        ApiClient ada = taught.api("ada");
        UUID sitting = taught.givenSitting(taught.api("iris"), ada, "SAF");
        UUID item = TaughtSchool.items(ada.get("/sittings/" + sitting)).get(0);
        List<Map<String, Object>> answers =
                List.of(
                        taught.answer(item, 1, 0, taught.right(item)),
                        taught.answer(item, 1, 1, taught.wrong(item)));

        List<String> receipts =
                answers.stream()
                        .map(
                                answer -> {
                                    UUID key = TestServer.newId();
                                    return ada.withKey(key)
                                            .post("/sittings/" + sitting + "/answers", answer)
                                            .body()
                                            .replace(key.toString(), "key")
                                            .replaceAll("\"readAs\":\"[^\"]*\"", "read");
                                })
                        .toList();

        assertThat(receipts.get(0)).isEqualTo(receipts.get(1));
    }
}
