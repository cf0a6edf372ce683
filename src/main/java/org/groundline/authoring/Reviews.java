package org.groundline.authoring;

import org.groundline.authoring.Event.Kind;
import org.groundline.authoring.Event.Validity;
import org.groundline.bank.Question;
import org.groundline.database.Violation;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;

import java.util.Optional;
import java.util.UUID;

/// What a second person decides about questions.
///
/// What is asked changes here and nowhere else. Items that were posed before keep the version they
/// were posed from.
public final class Reviews {
    private final Foundation foundation;
    private final SchoolBanks banks;

    public Reviews(Foundation foundation, SchoolBanks banks) {
        this.foundation = foundation;
        this.banks = banks;
    }

    /// Approves a submitted edition, which is asked from its first day on in place of what was
    /// asked under its id.
    ///
    /// @param version the version that the reviewer has read
    /// @throws Refusal.Conflict if the reviewer wrote it, or it was not submitted
    /// @throws Refusal.Stale if the text reads as another version now, as a misconception or source
    ///   it names was changed
    public void approve(Actor actor, UUID edition, String version, Validity validity) {
        actor.require(Action.REVIEW_QUESTION);
        if (validity.until().filter(until -> until.isBefore(validity.from())).isPresent()) {
            throw new Refusal.Invalid("until", "The last day comes after the first.");
        }
        change(
                foundation,
                banks,
                actor,
                edition,
                (desk, life, found) -> {
                    requireState(life, found, State.SUBMITTED, "approved");
                    requireSecondPerson(actor, found);
                    requireRead(desk, found, version);
                    desk.enter(Kind.APPROVED, found, Optional.of(validity), Optional.empty());
                });
    }

    private static void requireRead(Desk desk, Edition edition, String version) {
        Optional<String> now = desk.read(edition.text()).question().map(Question::version);
        if (!now.equals(Optional.of(version))) {
            throw new Refusal.Stale(
                    "The question reads differently now than when you opened it. Read it again"
                            + " before you approve it.");
        }
    }

    /// Sends a submitted edition back with a reason.
    ///
    /// @throws Refusal.Conflict if the reviewer wrote it, or it was not submitted
    public void sendBack(Actor actor, UUID edition, String reason) {
        actor.require(Action.REVIEW_QUESTION);
        change(
                foundation,
                banks,
                actor,
                edition,
                (desk, life, found) -> {
                    requireState(life, found, State.SUBMITTED, "sent back");
                    requireSecondPerson(actor, found);
                    enterWithReason(desk, Kind.SENT_BACK, found, reason);
                });
    }

    /// Takes an approved edition out. Where a shipped question has its id, that one is asked again.
    public void retire(Actor actor, UUID edition, String reason) {
        actor.require(Action.REVIEW_QUESTION);
        change(
                foundation,
                banks,
                actor,
                edition,
                (desk, life, found) -> {
                    State state = life.state(found);
                    if (state != State.LIVE && state != State.REVIEWED) {
                        throw new Refusal.Conflict("Only a question that is asked can be retired.");
                    }
                    enterWithReason(desk, Kind.RETIRED, found, reason);
                });
    }

    private static void enterWithReason(Desk desk, Kind kind, Edition edition, String reason) {
        UUID remark = desk.remark(edition.questionId(), Optional.of(edition.id()), reason);
        desk.enter(kind, edition, Optional.empty(), Optional.of(remark));
    }

    /// Asks a question no more, whatever its editions say, shipped ones included.
    public void withdraw(Actor actor, String question, String reason) {
        ofWhole(actor, question, Kind.WITHDRAWN, reason);
    }

    /// Asks a withdrawn question again.
    public void restore(Actor actor, String question, String reason) {
        ofWhole(actor, question, Kind.RESTORED, reason);
    }

    private void ofWhole(Actor actor, String question, Kind kind, String reason) {
        actor.require(Action.REVIEW_QUESTION);
        Desk.open(
                foundation,
                banks,
                actor,
                desk -> {
                    desk.requireKnown(question);
                    if (desk.life(question).isWithdrawn() == (kind == Kind.WITHDRAWN)) {
                        throw new Refusal.Conflict(
                                kind == Kind.WITHDRAWN
                                        ? "The question is withdrawn already."
                                        : "The question is not withdrawn.");
                    }
                    desk.enter(kind, question, desk.remark(question, Optional.empty(), reason));
                    return true;
                });
    }

    /// Writes a remark about a question, for everybody who works on the bank.
    public void remark(Actor actor, String question, String text) {
        actor.require(Action.READ_BANK);
        Desk.open(
                foundation,
                banks,
                actor,
                desk -> {
                    desk.requireKnown(question);
                    return desk.remark(question, Optional.empty(), text);
                });
    }

    /// Something done to an edition, with the life of its question before.
    interface Deed {
        void carryOut(Desk desk, Life life, Edition edition);
    }

    static void change(
            Foundation foundation, SchoolBanks banks, Actor actor, UUID edition, Deed deed) {
        try {
            Desk.open(
                    foundation,
                    banks,
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

    static void requireState(Life life, Edition edition, State needed, String deed) {
        if (life.latest().filter(edition::equals).isEmpty()) {
            throw new Refusal.Conflict(
                    "There is a newer edition of this question; only that one can be %s."
                            .formatted(deed));
        }
        if (life.state(edition) != needed) {
            throw new Refusal.Conflict(
                    "This edition is %s and cannot be %s."
                            .formatted(life.state(edition).word(), deed));
        }
    }

    private static void requireSecondPerson(Actor actor, Edition edition) {
        if (edition.author().equals(actor.subject())) {
            throw new Refusal.Conflict(
                    "You wrote this text. A second person must read it: that is what a review is.");
        }
    }
}
