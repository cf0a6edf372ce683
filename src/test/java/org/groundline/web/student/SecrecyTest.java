package org.groundline.web.student;

import static org.assertj.core.api.Assertions.assertThat;
import static org.groundline.web.student.SmallTest.choosing;
import static org.groundline.web.student.SmallTest.form;

import org.groundline.bank.Belief;
import org.groundline.bank.Key;
import org.groundline.sitting.Result;
import org.groundline.sitting.Result.ItemResult;
import org.groundline.web.TestServer;
import org.groundline.web.TestServer.Browser;
import org.groundline.web.request.Markdown;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteListener;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;

/// Before a test is handed in nothing of its keys leaves the server: no page shows any, no
/// statement reads any, and a right answer looks like a wrong one.
class SecrecyTest {
    private static final StatementLog LOG = new StatementLog();
    private static final TestServer SERVER = startServer();

    private final SmallTest test = SmallTest.open(SERVER);
    private final Browser ada = test.ada();

    /// What the server said to its database, in order.
    private static final class StatementLog implements ExecuteListener {
        private static final long serialVersionUID = 1L;
        private final List<String> statements = new CopyOnWriteArrayList<>();

        @Override
        public void executeStart(ExecuteContext statement) {
            statements.add(String.valueOf(statement.sql()).toLowerCase(Locale.ROOT));
        }

        /// Statements that read the table of keys; adding to it is none.
        List<String> readingKeys() {
            return statements.stream()
                    .filter(s -> s.contains("item_key") && !s.startsWith("insert into"))
                    .toList();
        }
    }

    private static TestServer startServer() {
        try {
            return TestServer.startWith(SmallTest.bank(Files.createTempDirectory("bank")), LOG);
        } catch (IOException e) {
            throw new IllegalStateException("no folder for the small bank", e);
        }
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    /// Sits the test with wrong answers and returns every page on the way.
    private List<String> sit(String sitting) {
        List<String> pages = new ArrayList<>();
        pages.add(ada.get("/tests/" + test.opened().id()).body());
        int choosing = choosing(ada, sitting);
        PageForm choice = form(ada, sitting, choosing);
        pages.add(choice.html());
        pages.add(
                ada.post(
                                sitting + "/answers",
                                choice.with("answer", choice.letterOf(SmallTest.WRONG)))
                        .body());
        PageForm number = form(ada, sitting, 3 - choosing);
        pages.add(number.html());
        pages.add(ada.post(sitting + "/answers", number.with("answer", "far")).body());
        pages.add(ada.post(sitting + "/answers", number.with("answer", "100")).body());
        pages.add(form(ada, sitting, choosing).html());
        pages.add(form(ada, sitting, 3 - choosing).html());
        pages.add(ada.get(sitting + "/review").body());
        pages.add(ada.get(sitting + "/result").body());
        return pages;
    }

    private Result handIn(String sitting) {
        ada.post(sitting + "/hand-in", Map.of("sure", "yes"));
        UUID id = UUID.fromString(sitting.substring("/sittings/".length()));
        return SERVER.doors().sittings().getResult(SERVER.actor(test.school(), "ada"), id);
    }

    @Test
    void noPageBeforeTheHandInShowsAnythingThatTheResultShows() {
        String sitting = test.begin(ada);
        List<String> pages = sit(sitting);
        Result result = handIn(sitting);

        List<String> reasons = result.items().stream().flatMap(this::reasons).toList();
        List<String> numbers = result.items().stream().flatMap(this::numbers).toList();
        String shown = ada.get(sitting + "/result").body();
        assertThat(reasons).hasSizeGreaterThan(5).allSatisfy(r -> assertThat(shown).contains(r));
        assertThat(numbers).hasSize(3);
        assertThat(pages)
                .isNotEmpty()
                .allSatisfy(
                        page -> {
                            assertThat(reasons).noneMatch(page::contains);
                            assertThat(numbers).noneMatch(withoutIds(page)::contains);
                        });
    }

    /// A page without its random ids, in whose digits any number could stand by chance.
    private static String withoutIds(String page) {
        return page.replaceAll("[0-9a-f-]{16,}", "");
    }

    /// The texts that the result shows of an item and that nobody may see before.
    private Stream<String> reasons(ItemResult item) {
        Stream<String> why =
                Stream.of(
                        Markdown.blocks(item.key().rationale()).strip(),
                        item.key().sources().get(0));
        Stream<String> steps = item.key().steps().stream().map(Markdown::inline);
        Stream<String> belief = item.mark().belief().stream().map(Belief::feedback);
        return Stream.of(why, steps, belief).flatMap(s -> s);
    }

    /// The answer and the bounds of what counts as right.
    private Stream<String> numbers(ItemResult item) {
        return switch (item.key()) {
            case Key.Choice choice -> Stream.empty();
            case Key.Number number ->
                    Stream.of(
                            number.answer().toPlainString(),
                            number.lowest().toPlainString(),
                            number.highest().toPlainString());
        };
    }

    @Test
    void aRightAnswerIsAnsweredLikeAWrongOne() {
        String sitting = test.begin(ada);
        int item = choosing(ada, sitting);

        String right = pageAfter(sitting, item, SmallTest.RIGHT);
        String wrong = pageAfter(sitting, item, SmallTest.WRONG);

        assertThat(wrong).isEqualTo(right);
    }

    /// The page after an answer, without what tells one rendering or one letter from another.
    private String pageAfter(String sitting, int item, String option) {
        PageForm before = form(ada, sitting, item);
        ada.post(sitting + "/answers", before.with("answer", before.letterOf(option)));
        return form(ada, sitting, item)
                .html()
                .replace(" checked", "")
                .replaceAll("(clientId|sequence)\" value=\"[^\"]*\"", "$1");
    }

    @Test
    void noStatementReadsTheKeysBeforeTheHandIn() {
        LOG.statements.clear();
        String sitting = test.begin(ada);
        sit(sitting);

        assertThat(LOG.statements).anyMatch(s -> s.startsWith("insert into answer"));
        assertThat(LOG.statements).anyMatch(s -> s.contains("item_key"));
        assertThat(LOG.readingKeys()).isEmpty();

        handIn(sitting);
        assertThat(LOG.readingKeys()).isNotEmpty();
    }
}
