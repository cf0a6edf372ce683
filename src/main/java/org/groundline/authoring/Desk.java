package org.groundline.authoring;

import org.groundline.authoring.Event.Kind;
import org.groundline.authoring.Event.Validity;
import org.groundline.bank.Manuscript;
import org.groundline.bank.OwnLists;
import org.groundline.bank.Question;
import org.groundline.bank.Questions;
import org.groundline.error.Refusal;
import org.groundline.ledger.Entry;
import org.groundline.ledger.EntryKind;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.jooq.DSLContext;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// One actor at work on the school's bank within one transaction: what the doors of this floor have
/// in common.
///
/// @param lists what the school's own questions may refer to
record Desk(Foundation foundation, SchoolBanks banks, Actor actor, DSLContext tx, OwnLists lists) {
    private static final int LONGEST_REMARK = 4_000;

    EditionRepository rows() {
        return new EditionRepository(tx, actor.school().id());
    }

    /// The bank as the school's students are asked it today.
    Questions bank() {
        return banks.in(tx, actor.school());
    }

    Manuscript read(String text) {
        return banks.shipped().read(text, lists);
    }

    /// What an edition reads as today; empty where its text has errors.
    Optional<Question> question(Edition edition) {
        return read(edition.text()).question();
    }

    private LocalDate today() {
        return actor.school().dayOf(foundation.now());
    }

    /// The lives of all questions to which something happened, by id.
    Map<String, Life> lives() {
        return SchoolBanks.lives(tx, actor.school(), today());
    }

    Life life(String question) {
        return new Life(rows().listEditions(question), rows().listEvents(question), today());
    }

    Edition edition(UUID id) {
        return rows().findEdition(id)
                .orElseThrow(
                        () ->
                                new Refusal.NotFound(
                                        "There is no such edition of a question in this school."));
    }

    /// Refuses for a question that is neither shipped nor the school's own.
    void requireKnown(String question) {
        if (rows().listEditions(question).isEmpty() && bank().findQuestion(question).isEmpty()) {
            throw new Refusal.NotFound("There is no such question in this school.");
        }
    }

    static void requireReason(String reason) {
        if (reason.isBlank() || reason.strip().length() > LONGEST_REMARK) {
            throw new Refusal.Invalid("reason", "Write it down, in at most 4000 letters.");
        }
    }

    /// Keeps a remark and returns its id.
    UUID remark(String question, Optional<UUID> edition, String text) {
        requireReason(text);
        UUID id = foundation.ids().next();
        rows().insert(
                        new Remark(
                                id,
                                question,
                                edition,
                                actor.subject(),
                                foundation.now(),
                                text.strip()));
        return id;
    }

    /// Enters what happened to an edition now.
    void enter(Kind kind, Edition edition, Optional<Validity> validity, Optional<UUID> remark) {
        enter(kind, edition.questionId(), Optional.of(edition.id()), validity, remark);
    }

    /// Enters what happened to a question as a whole now.
    void enter(Kind kind, String question, UUID remark) {
        enter(kind, question, Optional.empty(), Optional.empty(), Optional.of(remark));
    }

    private void enter(
            Kind kind,
            String question,
            Optional<UUID> edition,
            Optional<Validity> validity,
            Optional<UUID> remark) {
        var event =
                new Event(
                        foundation.ids().next(),
                        kind,
                        question,
                        edition,
                        validity,
                        actor.subject(),
                        foundation.now(),
                        remark);
        rows().insert(event);
        if (kind == Kind.SUBMITTED) {
            audit(Action.WRITE_QUESTION, kind.word() + " " + question);
        } else {
            audit(Action.REVIEW_QUESTION, kind.word() + " " + question);
            ledger(event);
        }
    }

    private void ledger(Event event) {
        Map<String, Object> facts = new HashMap<>();
        facts.put("question", event.questionId());
        facts.put("event", event.kind().word());
        event.edition().ifPresent(id -> facts.put("edition", id.toString()));
        event.validity().ifPresent(days -> facts.put("from", days.from().toString()));
        event.validity()
                .flatMap(Validity::until)
                .ifPresent(until -> facts.put("until", until.toString()));
        foundation
                .ledger()
                .write(
                        tx,
                        actor.school().id(),
                        new Entry(
                                EntryKind.QUESTION,
                                event.at(),
                                Optional.empty(),
                                Optional.of(actor.subject()),
                                facts));
    }

    void audit(Action action, String object) {
        foundation
                .audit()
                .write(
                        tx,
                        actor.school().id(),
                        Optional.of(actor.subject()),
                        Optional.empty(),
                        action.word(),
                        object);
    }
}
