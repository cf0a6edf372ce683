package org.groundline.sitting;

import org.groundline.database.SchoolId;
import org.groundline.ledger.Foundation;
import org.groundline.school.Actor;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// Seats a student at a device: what the paper asks without its keys, what was given so far, and
/// the seat under which this log-in answers. Another log-in than the last one gets the next seat.
final class Seating {
    private final Foundation foundation;

    Seating(Foundation foundation) {
        this.foundation = foundation;
    }

    OpenSitting open(DSLContext tx, Actor actor, Sitting.Open sitting) {
        SchoolId school = actor.school().id();
        Sitting.Facts facts = sitting.facts();
        var answerRows = new AnswerRepository(tx);
        Map<UUID, KeptAnswer> given = answerRows.countingAnswers(school, facts.id());
        int seat = seat(tx, actor, facts.id());
        return new OpenSitting(
                sitting,
                titleOf(tx, school, facts),
                new ItemRepository(tx, school).listItems(facts.paper()),
                given,
                answerRows.listFlags(school, facts.id()),
                seat,
                nextSequence(given, seat));
    }

    private static int nextSequence(Map<UUID, KeptAnswer> given, int seat) {
        return given.values().stream()
                .filter(a -> a.seat() == seat)
                .mapToInt(a -> a.sequence() + 1)
                .max()
                .orElse(0);
    }

    private static String titleOf(DSLContext tx, SchoolId school, Sitting.Facts facts) {
        return facts.opening()
                .flatMap(id -> new OpeningRepository(tx, school).findOpening(id))
                .map(opening -> opening.blueprint().name())
                .orElse(facts.scope());
    }

    private int seat(DSLContext tx, Actor actor, UUID sitting) {
        var rows = new SittingRepository(tx, actor.school().id());
        return rows.findSeat(sitting, actor.session())
                .orElseGet(
                        () -> {
                            Instant now = foundation.now();
                            rows.note(
                                    foundation.ids().next(),
                                    sitting,
                                    "seat opened",
                                    Optional.of(actor.subject()),
                                    now);
                            return rows.openSeat(sitting, actor.session(), now);
                        });
    }
}
