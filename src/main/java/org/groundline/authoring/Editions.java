package org.groundline.authoring;

import org.groundline.authoring.Event.Kind;
import org.groundline.bank.Manuscript;
import org.groundline.bank.Question;
import org.groundline.database.Violation;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;

import java.util.Optional;
import java.util.UUID;

/// A school's own questions, as their authors write them.
///
/// A text is never changed: who changes a question writes its next edition, until one is approved
/// (see [Reviews]). A question with the id of a shipped one stands in its place once it is, and no
/// update of the program overwrites it.
public final class Editions {
    private static final int LONGEST_TEXT = 20_000;
    private static final String ID_FORM = "[a-z0-9]+(-[a-z0-9]+)*";

    private final Desks desks;

    public Editions(Foundation foundation, SchoolBanks banks) {
        this.desks = new Desks(foundation, banks);
    }

    /// A text to be kept.
    ///
    /// @param since the number of the question's latest edition that the author has seen; 0 for
    ///   none
    /// @param change how far it asks something else than what is asked now
    public record Writing(String text, int since, Change change) {}

    /// Returns what the bank says to a text, without keeping it.
    public Manuscript check(Actor actor, String text) {
        actor.require(Action.WRITE_QUESTION);
        requireLength(text);
        return desks.open(actor, desk -> desk.read(text));
    }

    private static void requireLength(String text) {
        if (text.isBlank() || text.length() > LONGEST_TEXT) {
            throw new Refusal.Invalid("text", "A question has between 1 and 20,000 letters.");
        }
    }

    /// Keeps a text as the next edition of the question that it names. It may have errors.
    ///
    /// @throws Refusal.Invalid if the text does not name a question
    /// @throws Refusal.Stale if somebody wrote another edition meanwhile
    public Edition keep(Actor actor, Writing writing) {
        actor.require(Action.WRITE_QUESTION);
        requireLength(writing.text());
        try {
            return desks.open(actor, desk -> keep(desk, writing));
        } catch (Violation e) {
            throw stale();
        }
    }

    private static Edition keep(Desk desk, Writing writing) {
        Manuscript read = desk.read(writing.text());
        requireId(read.id());
        int latest = desk.life(read.id()).latest().map(Edition::number).orElse(0);
        if (latest != writing.since()) {
            throw stale();
        }
        var edition =
                new Edition(
                        desk.foundation().ids().next(),
                        read.id(),
                        latest + 1,
                        writing.text(),
                        read.question().map(Question::version),
                        desk.bank()
                                .findQuestion(read.id())
                                .map(q -> new Edition.Origin(q.version(), writing.change())),
                        desk.actor().subject(),
                        desk.foundation().now());
        desk.rows().insert(edition);
        desk.audit(Action.WRITE_QUESTION, "edition " + edition.id());
        return edition;
    }

    private static void requireId(String id) {
        if (!id.matches(ID_FORM) || id.length() > 64) {
            throw new Refusal.Invalid(
                    "id",
                    "Give the question an id of small letters, digits and hyphens, such as"
                            + " gust-before-launch; without it nothing can be kept.");
        }
    }

    private static Refusal stale() {
        return new Refusal.Stale(
                "Somebody else has written an edition of this question meanwhile. Your text is"
                        + " still here: compare the two before you keep it.");
    }

    /// Hands the latest edition of a question to a second person.
    ///
    /// @throws Refusal.Conflict if its text has errors, or it is not the latest draft
    public void submit(Actor actor, UUID edition) {
        actor.require(Action.WRITE_QUESTION);
        desks.change(
                actor,
                edition,
                (desk, life, found) -> {
                    life.requireState(found, State.DRAFT, "submitted");
                    if (desk.question(found).isEmpty()) {
                        throw new Refusal.Conflict(
                                "The text still has errors. Mend them; then it can be submitted.");
                    }
                    desk.enter(Kind.SUBMITTED, found, Optional.empty(), Optional.empty());
                });
    }
}
