package org.groundline.authoring;

import org.groundline.bank.Misconception;
import org.groundline.bank.OwnLists;
import org.groundline.bank.Source;
import org.groundline.database.Violation;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;

import java.util.List;
import java.util.function.Consumer;

/// The misconceptions and sources that a school adds for its own questions. Who changes one writes
/// it again under its id; questions that name it then read as another version.
public final class OwnWords {
    private final Foundation foundation;
    private final SchoolBanks banks;
    private final Desks desks;

    public OwnWords(Foundation foundation, SchoolBanks banks) {
        this.foundation = foundation;
        this.banks = banks;
        this.desks = new Desks(foundation, banks);
    }

    /// Returns the school's lists, by id.
    public OwnLists lists(Actor actor) {
        actor.require(Action.READ_BANK);
        return desks.open(actor, Desk::lists);
    }

    /// Enters a misconception.
    ///
    /// @throws Refusal.Invalid if its texts break a rule of the bank, or a shipped one has its id
    public void enter(Actor actor, Misconception idea) {
        if (banks.shipped().findMisconception(idea.id()).isPresent()) {
            throw taken("misconception", idea.id());
        }
        requireSound(OwnLists.problems(idea));
        enter(actor, rows -> rows.insert(idea, actor.subject(), foundation.now()));
    }

    /// Enters a source.
    ///
    /// @throws Refusal.Invalid if its texts break a rule of the bank, or a shipped one has its id
    public void enter(Actor actor, Source source) {
        if (banks.shipped().findSource(source.id()).isPresent()) {
            throw taken("source", source.id());
        }
        requireSound(OwnLists.problems(source));
        enter(actor, rows -> rows.insert(source, actor.subject(), foundation.now()));
    }

    private static Refusal taken(String noun, String id) {
        return new Refusal.Invalid(
                "id",
                "A shipped %s has the id %s already. Use that one, or choose another id."
                        .formatted(noun, id));
    }

    private static void requireSound(List<String> problems) {
        if (!problems.isEmpty()) {
            throw new Refusal.Invalid(String.join(" ", problems));
        }
    }

    private void enter(Actor actor, Consumer<OwnListRepository> entry) {
        actor.require(Action.WRITE_QUESTION);
        try {
            desks.open(
                    actor,
                    desk -> {
                        entry.accept(new OwnListRepository(desk.tx(), actor.school().id()));
                        desk.audit(Action.WRITE_QUESTION, "own lists");
                        return true;
                    });
        } catch (Violation e) {
            throw new Refusal.Stale("Somebody else entered the same id just now. Look again.");
        }
    }
}
