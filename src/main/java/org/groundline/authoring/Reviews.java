package org.groundline.authoring;

import org.groundline.authoring.Event.Kind;
import org.groundline.authoring.Event.Validity;
import org.groundline.bank.Question;
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
    private final Desks desks;

    public Reviews(Foundation foundation, SchoolBanks banks) {
        this.desks = new Desks(foundation, banks);
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
        desks.change(
                actor,
                edition,
                (desk, life, found) -> {
                    life.requireState(found, State.SUBMITTED, "approved");
                    requireSecondPerson(actor, found);
                    requireRead(desk, found, version);
                    desk.enter(Kind.APPROVED, found, Optional.of(validity), Optional.empty());
                });
    }

    private static void requireRead(Desk desk, Edition edition, String version) {
        Optional<String> now = desk.question(edition).map(Question::version);
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
        desks.change(
                actor,
                edition,
                (desk, life, found) -> {
                    life.requireState(found, State.SUBMITTED, "sent back");
                    requireSecondPerson(actor, found);
                    enterWithReason(desk, Kind.SENT_BACK, found, reason);
                });
    }

    /// Takes an approved edition out. Where a shipped question has its id, that one is asked again.
    public void retire(Actor actor, UUID edition, String reason) {
        actor.require(Action.REVIEW_QUESTION);
        desks.change(
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
        desks.open(
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
        desks.open(
                actor,
                desk -> {
                    desk.requireKnown(question);
                    return desk.remark(question, Optional.empty(), text);
                });
    }

    private static void requireSecondPerson(Actor actor, Edition edition) {
        if (edition.author().equals(actor.subject())) {
            throw new Refusal.Conflict(
                    "You wrote this text. A second person must read it: that is what a review is.");
        }
    }
}
