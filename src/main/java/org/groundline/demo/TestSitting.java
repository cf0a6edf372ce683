package org.groundline.demo;

import org.groundline.bank.Key;
import org.groundline.school.Actor;
import org.groundline.sitting.GivenAnswer;
import org.groundline.sitting.Item;
import org.groundline.sitting.OpenSitting;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// One student sits one test: begins it, answers at their own pace, now and then leaves a question
/// out, flags it or changes an answer, and hands in; whoever is too slow is handed in by the clock.
final class TestSitting {
    private static final double LEFT_OUT = 0.012;
    private static final double FLAGGED = 0.06;
    private static final double CHANGED = 0.05;
    private static final int SECONDS_TO_CHANGE = 7;

    private final World world;
    private final Student student;
    private final Chance chance;
    private final Actor actor;
    private final OpenSitting paper;
    private int sequence;

    private TestSitting(World world, Student student, UUID opening) {
        this.world = world;
        this.student = student;
        this.chance = student.chance().of("test " + world.daysBefore());
        this.actor = world.as(student.email());
        world.doors().seeds().forget();
        UUID id = world.doors().sittings().begin(actor, opening);
        this.paper = world.doors().sittings().open(actor, id);
        this.sequence = paper.nextSequence();
    }

    /// Begins now, and enters the rest into the agenda.
    static void begin(World world, Student student, UUID opening) {
        new TestSitting(world, student, opening).plan();
    }

    private void plan() {
        Instant deadline = paper.sitting().deadline().orElseThrow();
        double pace = chance.between(0.6, 1.4);
        Instant at = world.now();
        for (Item item : paper.items()) {
            at = at.plusSeconds(Math.round(pace * chance.between(20, 80)));
            if (at.isBefore(deadline) && !chance.happens(LEFT_OUT)) {
                planAnswer(item, at);
            }
        }
        Instant end = at.plusSeconds(chance.between(60, 300));
        if (end.isBefore(deadline)) {
            world.agenda().enter(end, () -> world.doors().sittings().handIn(actor, id()));
        }
        world.agenda()
                .enter(
                        deadline.plusSeconds(1),
                        () -> world.doors().sittings().closeOverdue(world.school().id()));
    }

    private void planAnswer(Item item, Instant at) {
        Key key = world.doors().seeds().keyOf(world.bank(), item);
        Chance own = chance.of(item.questionId());
        String raw =
                student.mind().answer(world.bank().question(item.questionId()), key, own.of("raw"));
        if (key instanceof Key.Choice choice && own.happens(CHANGED)) {
            String first = own.oneOf(List.copyOf(choice.beliefs().keySet()));
            planAnswer(item, at.minusSeconds(SECONDS_TO_CHANGE), first);
        }
        planAnswer(item, at, raw);
        if (own.happens(FLAGGED)) {
            world.agenda()
                    .enter(at, () -> world.doors().sittings().flag(actor, id(), item.id(), true));
        }
    }

    private void planAnswer(Item item, Instant at, String raw) {
        int place = sequence++;
        var given =
                new GivenAnswer(
                        world.doors().foundation().ids().random(),
                        item.id(),
                        paper.seat(),
                        place,
                        Optional.of(at),
                        at,
                        raw);
        world.agenda().enter(at, () -> world.doors().sittings().answer(actor, id(), given));
    }

    private UUID id() {
        return paper.sitting().facts().id();
    }
}
