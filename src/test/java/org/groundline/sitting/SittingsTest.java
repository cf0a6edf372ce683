package org.groundline.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.bank.Shown;
import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.web.TestServer;
import org.jooq.DSLContext;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;

/// Sitting a test through its door, on a real PostgreSQL.
class SittingsTest {
    private static final TestServer SERVER = TestServer.start();
    private final School school =
            SERVER.givenSchool("s" + UUID.randomUUID().toString().substring(0, 8));
    private final SubjectId ada = SERVER.givenPerson(school, "ada", Role.STUDENT);
    private final Intake intake = SERVER.givenIntake(school, "Spring", ada);
    private final Actor student = SERVER.actor(school, "ada");
    private final Sittings sittings = SERVER.doors().sittings();

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private Opening givenOpening() {
        SERVER.givenPerson(school, "ivo" + UUID.randomUUID(), Role.STUDENT);
        SERVER.givenPerson(school, "ina", Role.INSTRUCTOR);
        var wish = new Openings.NewOpening("AER", intake.id(), Duration.ofHours(2), "Hut");
        return SERVER.doors().openings().open(SERVER.actor(school, "ina"), wish);
    }

    private static GivenAnswer answer(OpenSitting open, Item item, String raw, int sequence) {
        return new GivenAnswer(
                UUID.randomUUID(),
                item.id(),
                open.seat(),
                sequence,
                Optional.empty(),
                SERVER.now(),
                raw);
    }

    /// The first multiple-choice item of a paper.
    private static Item choice(OpenSitting open) {
        return open.items().stream()
                .filter(i -> i.shown() instanceof Shown.Choice)
                .findFirst()
                .orElseThrow();
    }

    private static String rawTo(OpenSitting open, Item item) {
        return Optional.ofNullable(open.answers().get(item.id())).orElseThrow().raw();
    }

    private int count(String table, UUID sitting) {
        return SERVER.database()
                .inSchool(
                        school.id(),
                        (DSLContext tx) ->
                                tx.fetchOne(
                                                "select count(*) from "
                                                        + table
                                                        + " where sitting_id = ?",
                                                sitting)
                                        .get(0, Integer.class));
    }

    @Test
    void twoClicksBeginOneSitting() throws Exception {
        Opening opening = givenOpening();

        List<UUID> begun = atOnce(4, i -> sittings.begin(student, opening.id()));

        assertThat(begun).containsOnly(begun.get(0));
    }

    @Test
    void aWholeClassBeginsAtOnce() throws Exception {
        Opening opening = givenOpening();
        List<Actor> students =
                IntStream.range(0, 12)
                        .mapToObj(
                                i -> {
                                    SubjectId subject =
                                            SERVER.givenPerson(school, "s" + i, Role.STUDENT);
                                    SERVER.doors()
                                            .people()
                                            .join(school, Optional.empty(), intake.id(), subject);
                                    return SERVER.actor(school, "s" + i);
                                })
                        .toList();

        List<UUID> begun = atOnce(12, i -> sittings.begin(students.get(i), opening.id()));

        assertThat(begun).doesNotHaveDuplicates().hasSize(12);
    }

    @Test
    void aPaperFollowsItsBlueprint() {
        Opening opening = givenOpening();
        OpenSitting open = sittings.open(student, sittings.begin(student, opening.id()));

        assertThat(open.items()).hasSize(opening.blueprint().items());
        opening.blueprint()
                .topics()
                .forEach(
                        (topic, wanted) ->
                                assertThat(
                                                open.items().stream()
                                                        .filter(i -> i.topic().equals(topic)))
                                        .hasSize(wanted));
        assertThat(open.items().stream().filter(Item::safetyCritical).count())
                .isGreaterThanOrEqualTo(opening.blueprint().safetyCritical());
        assertThat(open.items().stream().filter(i -> i.shown() instanceof Shown.Number).count())
                .isLessThanOrEqualTo(opening.blueprint().numericMost());
        assertThat(open.items().stream().map(Item::questionId).distinct())
                .hasSize(open.items().size());
    }

    @Test
    void theSameRequestTwiceIsOneAnswerAndAnotherUnderItsIdIsRefused() {
        UUID id = sittings.begin(student, givenOpening().id());
        OpenSitting open = sittings.open(student, id);
        GivenAnswer given = answer(open, choice(open), "A", 0);

        Receipt first = sittings.answer(student, id, given);
        SERVER.passes(Duration.ofSeconds(3));
        Receipt again = sittings.answer(student, id, given);

        assertThat(first.replayed()).isFalse();
        assertThat(again.replayed()).isTrue();
        assertThat(again.receivedAt()).isEqualTo(first.receivedAt());
        assertThat(count("answer", id)).isOne();
        var other =
                new GivenAnswer(
                        given.clientId(),
                        given.item(),
                        given.seat(),
                        1,
                        Optional.empty(),
                        SERVER.now(),
                        "B");
        assertThatThrownBy(() -> sittings.answer(student, id, other))
                .isInstanceOf(Refusal.Mismatch.class);
        assertThat(count("answer", id)).isOne();
    }

    @Test
    void theSameRequestAtOnceFromManyThreadsIsOneAnswer() throws Exception {
        UUID id = sittings.begin(student, givenOpening().id());
        OpenSitting open = sittings.open(student, id);
        GivenAnswer given = answer(open, choice(open), "A", 0);

        List<Receipt> receipts = atOnce(8, i -> sittings.answer(student, id, given));

        assertThat(receipts.stream().filter(r -> !r.replayed())).hasSize(1);
        assertThat(count("answer", id)).isOne();
    }

    @Test
    void twoTabsAtOnceKeepBothAnswersAndTheLastBySequenceCounts() throws Exception {
        UUID id = sittings.begin(student, givenOpening().id());
        OpenSitting open = sittings.open(student, id);
        Item item = choice(open);

        atOnce(2, i -> sittings.answer(student, id, answer(open, item, i == 0 ? "A" : "B", i)));

        assertThat(count("answer", id)).isEqualTo(2);
        assertThat(rawTo(sittings.open(student, id), item)).isEqualTo("B");
    }

    @Test
    void anotherDeviceStartsTheNextSeatAndTheOldOneCannotGoOn() {
        UUID id = sittings.begin(student, givenOpening().id());
        OpenSitting laptop = sittings.open(student, id);
        sittings.answer(student, id, answer(laptop, choice(laptop), "A", 7));
        Actor phone = SERVER.actor(school, "ada");

        OpenSitting there = sittings.open(phone, id);
        sittings.answer(phone, id, answer(there, choice(there), "B", 0));

        assertThat(there.seat()).isEqualTo(2);
        assertThat(rawTo(there, choice(there))).isEqualTo("A");
        assertThat(rawTo(sittings.open(phone, id), choice(there))).isEqualTo("B");
        assertThatThrownBy(() -> sittings.answer(phone, id, answer(laptop, choice(laptop), "C", 8)))
                .isInstanceOf(Refusal.Conflict.class);
    }

    @Test
    void nobodyAnswersInAnothersSittingNorAnItemOfAnotherPaper() {
        Opening opening = givenOpening();
        SubjectId bo = SERVER.givenPerson(school, "bo", Role.STUDENT);
        SERVER.doors().people().join(school, Optional.empty(), intake.id(), bo);
        Actor other = SERVER.actor(school, "bo");
        UUID mine = sittings.begin(student, opening.id());
        UUID theirs = sittings.begin(other, opening.id());
        OpenSitting open = sittings.open(student, mine);
        OpenSitting foreign = sittings.open(other, theirs);

        assertThatThrownBy(() -> sittings.answer(other, mine, answer(open, choice(open), "A", 0)))
                .isInstanceOf(Refusal.NotFound.class);
        assertThatThrownBy(
                        () -> sittings.answer(student, mine, answer(open, choice(foreign), "A", 0)))
                .isInstanceOf(Refusal.NotFound.class);
        assertThat(count("answer", mine) + count("answer", theirs)).isZero();
    }

    @Test
    void afterHandInNothingIsTakenAndHandingInAgainChangesNothing() {
        UUID id = sittings.begin(student, givenOpening().id());
        OpenSitting open = sittings.open(student, id);
        assertThatThrownBy(() -> sittings.getResult(student, id))
                .isInstanceOf(Refusal.Conflict.class);

        sittings.handIn(student, id);
        sittings.handIn(student, id);

        assertThat(count("scoring_run", id)).isOne();
        assertThatThrownBy(() -> sittings.answer(student, id, answer(open, choice(open), "A", 0)))
                .isInstanceOf(Refusal.Conflict.class)
                .hasMessageContaining("handed in already");
        assertThat(sittings.getResult(student, id).hundredths()).isZero();
    }

    @Test
    void theClockHandsInAtTheDeadlineAndLaterAnswersAreRefused() {
        Opening opening = givenOpening();
        UUID id = sittings.begin(student, opening.id());
        OpenSitting open = sittings.open(student, id);
        sittings.answer(student, id, answer(open, choice(open), "A", 0));

        SERVER.passes(Duration.ofMinutes(opening.blueprint().minutes()).plusSeconds(1));

        assertThatThrownBy(() -> sittings.answer(student, id, answer(open, choice(open), "B", 1)))
                .isInstanceOf(Refusal.Conflict.class)
                .hasMessageContaining("time was over");
        Result result = sittings.getResult(student, id);
        assertThat(result.sitting().by()).isEqualTo("clock");
        assertThat(result.sitting().at()).isEqualTo(open.sitting().deadline().orElseThrow());
        assertThat(result.items().stream().filter(i -> i.answer().isPresent())).hasSize(1);
    }

    @Test
    void anAnswerThatRacesAHandInIsMarkedOrRefusedNeverAcknowledgedAndUnmarked() throws Exception {
        for (int round = 0; round < 15; round++) {
            UUID id = sittings.begin(student, givenOpeningAgain());
            OpenSitting open = sittings.open(student, id);
            Item item = choice(open);

            List<Boolean> acknowledged =
                    atOnce(
                            2,
                            i -> {
                                if (i == 1) {
                                    sittings.handIn(student, id);
                                    return false;
                                }
                                try {
                                    sittings.answer(student, id, answer(open, item, "A", 0));
                                    return true;
                                } catch (Refusal.Conflict e) {
                                    return false;
                                }
                            });

            boolean marked =
                    sittings.getResult(student, id).items().stream()
                            .anyMatch(
                                    i ->
                                            i.item().id().equals(item.id())
                                                    && i.mark().verdict() != Verdict.UNANSWERED);
            assertThat(marked).isEqualTo(acknowledged.get(0));
            int answersInMarks =
                    SERVER.database()
                            .inSchool(
                                    school.id(),
                                    (DSLContext tx) ->
                                            tx.fetchOne(
                                                            "select count(*) from mark m join result r on r.current = m.run_id where r.sitting_id = ?"
                                                                    + " and m.answer_id is not null",
                                                            id)
                                                    .get(0, Integer.class));
            assertThat(answersInMarks).isEqualTo(acknowledged.get(0) ? 1 : 0);
        }
    }

    private UUID givenOpeningAgain() {
        if (SERVER.doors().people().listStudents(school, Optional.empty()).size() == 1) {
            return givenOpening().id();
        }
        var wish = new Openings.NewOpening("AER", intake.id(), Duration.ofHours(2), "");
        return SERVER.doors().openings().open(SERVER.actor(school, "ina"), wish).id();
    }

    @Test
    void aHandInWaitsForAnAnswerThatIsBeingWritten() throws Exception {
        UUID id = sittings.begin(student, givenOpening().id());
        OpenSitting open = sittings.open(student, id);
        Item item = choice(open);
        try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            Future<?> handIn =
                    SERVER.database()
                            .inSchool(
                                    school.id(),
                                    (DSLContext tx) -> {
                                        var waiting = waiting(id, answer(open, item, "A", 0));
                                        assertThat(
                                                        new AnswerRepository(tx)
                                                                .insert(List.of(waiting)))
                                                .hasSize(1);
                                        Future<?> racing =
                                                threads.submit(() -> sittings.handIn(student, id));
                                        assertThatThrownBy(
                                                        () ->
                                                                racing.get(
                                                                        300,
                                                                        java.util.concurrent
                                                                                .TimeUnit
                                                                                .MILLISECONDS))
                                                .isInstanceOf(
                                                        java.util.concurrent.TimeoutException
                                                                .class);
                                        return racing;
                                    });
            handIn.get();
        }
        assertThat(
                        sittings.getResult(student, id).items().stream()
                                .filter(i -> i.answer().isPresent()))
                .hasSize(1);
    }

    private WaitingAnswer waiting(UUID sitting, GivenAnswer given) {
        return new WaitingAnswer(
                school.id(),
                ada,
                sitting,
                given,
                given.raw(),
                new java.util.concurrent.CompletableFuture<>());
    }

    @Test
    void thePaperIsReproducibleFromItsSeed() {
        UUID id = sittings.begin(student, givenOpening().id());
        OpenSitting open = sittings.open(student, id);
        SERVER.database()
                .doInSchool(
                        school.id(),
                        tx -> {
                            var rows =
                                    tx.fetch(
                                            "select question_id, seed, shown::text from item where paper_id = ? order by position",
                                            open.sitting().facts().paper());
                            for (var row : rows) {
                                var question = TestServer.bank().question(row.get(0, String.class));
                                var again =
                                        TestServer.bank().pose(question, row.get(1, Long.class));
                                assertThat(
                                                org.groundline.bank.Frozen.readShown(
                                                        row.get(2, String.class)))
                                        .isEqualTo(again.shown());
                            }
                        });
    }

    private interface Part<T> {
        T run(int index);
    }

    /// Runs a thing in several threads that start together.
    private static <T> List<T> atOnce(int threads, Part<T> part) throws Exception {
        var barrier = new CyclicBarrier(threads);
        try (var pool = Executors.newFixedThreadPool(threads)) {
            List<Callable<T>> calls =
                    IntStream.range(0, threads)
                            .mapToObj(
                                    i ->
                                            (Callable<T>)
                                                    () -> {
                                                        barrier.await();
                                                        return part.run(i);
                                                    })
                            .toList();
            List<T> results = new java.util.ArrayList<>();
            for (Future<T> future : pool.invokeAll(calls)) {
                results.add(future.get());
            }
            return results;
        }
    }
}
