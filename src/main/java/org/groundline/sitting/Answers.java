package org.groundline.sitting;

import org.groundline.database.SchoolId;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.school.Actor;
import org.jooq.DSLContext;

import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/// Takes answers: reads them, hands them to the writer, and says what became of them. Practice and
/// tests take them the same way, and right and wrong ones take the same way.
final class Answers {
    private final Foundation foundation;
    private final AnswerWriter writer;

    Answers(Foundation foundation, AnswerWriter writer) {
        this.foundation = foundation;
        this.writer = writer;
    }

    /// Keeps an answer of the actor's and returns after its commit.
    ///
    /// @throws Refusal.NotFound if it is no item of a sitting of the actor's
    /// @throws Refusal.Invalid if it cannot be read as an answer to the item
    /// @throws Refusal.Conflict if the sitting takes no more answers
    /// @throws Refusal.Mismatch if the client id was used for another answer
    Receipt keep(Actor actor, UUID sitting, GivenAnswer given) {
        SchoolId school = actor.school().id();
        Item item =
                foundation.database().inSchool(school, tx -> getItem(tx, actor, sitting, given));
        Locale language = Locale.forLanguageTag(actor.school().language());
        AnswerReading reading = AnswerReading.of(item.shown(), given.raw(), language);
        var waiting =
                new WaitingAnswer(
                        school,
                        actor.subject(),
                        sitting,
                        given,
                        reading.text(),
                        new CompletableFuture<>());
        if (await(writer.write(waiting))) {
            return new Receipt(
                    given.clientId(), item.id(), given.receivedAt(), reading.echo(), false);
        }
        return replayOrRefuse(actor, sitting, given, reading);
    }

    private static Item getItem(DSLContext tx, Actor actor, UUID sitting, GivenAnswer given) {
        Item item =
                new ItemRepository(tx, actor.school().id())
                        .findItem(sitting, given.item(), actor.subject())
                        .orElseThrow(
                                () ->
                                        new Refusal.NotFound(
                                                "This sitting of yours has no such question."));
        if (!new SittingRepository(tx, actor.school().id())
                .isSeatOf(sitting, given.seat(), actor.session())) {
            throw new Refusal.Conflict(
                    "This page was opened under another log-in. Open the test again to go on; what was saved is kept.");
        }
        return item;
    }

    private static boolean await(CompletableFuture<Boolean> kept) {
        try {
            return kept.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : e;
        }
    }

    private Receipt replayOrRefuse(
            Actor actor, UUID sitting, GivenAnswer given, AnswerReading reading) {
        SchoolId school = actor.school().id();
        Optional<KeptAnswer> before =
                foundation
                        .database()
                        .inSchool(
                                school,
                                tx ->
                                        new AnswerRepository(tx)
                                                .findAnswer(school, given.clientId()));
        if (before.isEmpty()) {
            throw foundation.database().inSchool(school, tx -> why(tx, school, sitting, given));
        }
        KeptAnswer kept = before.get();
        if (!kept.item().equals(given.item()) || !kept.raw().equals(given.raw())) {
            throw new Refusal.Mismatch(
                    "This id was used for another answer before. Send the new answer under a new id.");
        }
        return new Receipt(kept.clientId(), kept.item(), kept.receivedAt(), reading.echo(), true);
    }

    private static Refusal why(DSLContext tx, SchoolId school, UUID sitting, GivenAnswer given) {
        Sitting now =
                new SittingRepository(tx, school)
                        .findSitting(sitting)
                        .orElseThrow(
                                () -> new IllegalStateException("the sitting is gone: " + sitting));
        return switch (now) {
            case Sitting.HandedIn handedIn ->
                    new Refusal.Conflict("This was handed in already; the answer was not taken.");
            case Sitting.Annulled annulled ->
                    new Refusal.Conflict(
                            "This sitting was set aside by your school; the answer was not taken.");
            case Sitting.Open open
                    when open.deadline().filter(d -> given.receivedAt().isAfter(d)).isPresent() ->
                    new Refusal.Conflict(
                            "The time was over when this answer arrived; it was not taken.");
            case Sitting.Open open ->
                    new Refusal.Conflict(
                            "This question was answered already; the first answer counts.");
        };
    }
}
