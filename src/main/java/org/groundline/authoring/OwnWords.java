package org.groundline.authoring;

import org.groundline.bank.Misconception;
import org.groundline.bank.OwnLists;
import org.groundline.bank.Questions;
import org.groundline.bank.Source;
import org.groundline.database.Violation;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;

import java.util.function.Consumer;

/// The misconceptions and sources that a school adds for its own questions. Who changes one writes
/// it again under its id; questions that name it then read as another version.
public final class OwnWords {
    private final Foundation foundation;
    private final SchoolBanks banks;

    public OwnWords(Foundation foundation, SchoolBanks banks) {
        this.foundation = foundation;
        this.banks = banks;
    }

    /// Returns the school's lists, by id.
    public OwnLists lists(Actor actor) {
        actor.require(Action.READ_BANK);
        return Desk.open(
                foundation,
                banks,
                actor,
                desk -> new OwnListRepository(desk.tx(), actor.school().id()).lists());
    }

    /// Enters a misconception.
    ///
    /// @throws Refusal.Invalid if its texts break a rule of the bank, or a shipped one has its id
    public void enter(Actor actor, Misconception idea) {
        Questions shipped = banks.shipped();
        if (shipped.findMisconception(idea.id()).isPresent()) {
            throw taken("misconception", idea.id());
        }
        requireSound(shipped.check(idea));
        enter(actor, rows -> rows.insert(idea, actor.subject(), foundation.now()));
    }

    /// Enters a source.
    ///
    /// @throws Refusal.Invalid if its texts break a rule of the bank, or a shipped one has its id
    public void enter(Actor actor, Source source) {
        Questions shipped = banks.shipped();
        if (shipped.findSource(source.id()).isPresent()) {
            throw taken("source", source.id());
        }
        requireSound(shipped.check(source));
        enter(actor, rows -> rows.insert(source, actor.subject(), foundation.now()));
    }

    private static Refusal taken(String noun, String id) {
        return new Refusal.Invalid(
                "id",
                "A shipped %s has the id %s already. Use that one, or choose another id."
                        .formatted(noun, id));
    }

    private static void requireSound(java.util.List<String> problems) {
        if (!problems.isEmpty()) {
            throw new Refusal.Invalid(String.join(" ", problems));
        }
    }

    private void enter(Actor actor, Consumer<OwnListRepository> entry) {
        actor.require(Action.WRITE_QUESTION);
        try {
            Desk.open(
                    foundation,
                    banks,
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
