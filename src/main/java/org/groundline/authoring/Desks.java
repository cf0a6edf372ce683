package org.groundline.authoring;

import org.groundline.database.Violation;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.school.Actor;

import java.util.UUID;
import java.util.function.Function;

/// Where the doors of this floor get their desk.
record Desks(Foundation foundation, SchoolBanks banks) {
    <T> T open(Actor actor, Function<Desk, T> work) {
        return foundation
                .database()
                .inSchool(
                        actor.school().id(),
                        tx -> {
                            var lists = new OwnListRepository(tx, actor.school().id()).lists();
                            return work.apply(new Desk(foundation, banks, actor, tx, lists));
                        });
    }

    /// Something done to an edition, with the life of its question before.
    interface Deed {
        void carryOut(Desk desk, Life life, Edition edition);
    }

    /// Does something to an edition.
    ///
    /// @throws Refusal.Stale if somebody did it at the same time
    void change(Actor actor, UUID edition, Deed deed) {
        try {
            open(
                    actor,
                    desk -> {
                        Edition found = desk.edition(edition);
                        deed.carryOut(desk, desk.life(found.questionId()), found);
                        return true;
                    });
        } catch (Violation e) {
            throw new Refusal.Stale("Somebody else was faster. Look at the question again.");
        }
    }
}
