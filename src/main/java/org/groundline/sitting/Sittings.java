package org.groundline.sitting;

import org.groundline.authoring.SchoolBanks;
import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.groundline.database.Violation;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Policies;
import org.groundline.school.School;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.LongSupplier;

/// Sitting a test that counts: beginning it, answering, handing in, the result.
public final class Sittings {
    private final Foundation foundation;
    private final Posing posing;
    private final Openings openings;
    private final Answers answers;
    private final Scoring scoring;
    private final Seating seating;
    private final HandIn handIn;

    public Sittings(
            Foundation foundation, SchoolBanks banks, AnswerWriter writer, Openings openings) {
        this(foundation, banks, writer, openings, Posing.secureSeeds());
    }

    /// @param seeds what papers are drawn with; whoever knows it can foretell every paper
    public Sittings(
            Foundation foundation,
            SchoolBanks banks,
            AnswerWriter writer,
            Openings openings,
            LongSupplier seeds) {
        this.foundation = foundation;
        this.posing = new Posing(foundation, banks, seeds);
        this.openings = openings;
        this.answers = new Answers(foundation, writer);
        this.scoring = new Scoring(foundation);
        this.seating = new Seating(foundation);
        this.handIn = new HandIn(foundation, scoring);
    }

    /// Begins the sitting of an opened test, or returns the one begun before: two clicks begin one.
    ///
    /// @throws Refusal.NotFound if no such test was opened for the actor's intake
    /// @throws Refusal.Conflict if it may not be begun now
    public UUID begin(Actor actor, UUID opening) {
        actor.requireAtAll(Action.SIT);
        try {
            return inSchool(actor, tx -> begin(tx, actor, opening));
        } catch (Violation e) {
            return inSchool(
                    actor,
                    tx -> begin(tx, actor, opening)); // another click won; this finds its sitting
        }
    }

    private UUID begin(DSLContext tx, Actor actor, UUID openingId) {
        SchoolId school = actor.school().id();
        Opening opening =
                new OpeningRepository(tx, school)
                        .listFor(actor.subject()).stream()
                                .filter(o -> o.id().equals(openingId))
                                .findFirst()
                                .orElseThrow(
                                        () ->
                                                new Refusal.NotFound(
                                                        "No such test is open for your intake."));
        var sittings = new SittingRepository(tx, school);
        Optional<Sitting> before = sittings.findByOpening(openingId, actor.subject());
        if (before.isPresent()) {
            return before.get().facts().id();
        }
        openings.requireCountable();
        if (!opening.isOpenAt(foundation.now())) {
            throw new Refusal.Conflict(
                    "This test is not open now. Ask your instructor to open it again.");
        }
        return beginNew(tx, actor, opening);
    }

    private UUID beginNew(DSLContext tx, Actor actor, Opening opening) {
        School school = actor.school();
        Instant now = foundation.now();
        String language = QuestionLanguages.languageOf(tx, school.id(), actor.subject());
        UUID paper = posing.assemble(tx, school, opening.blueprint(), language);
        var facts =
                new Sitting.Facts(
                        foundation.ids().next(),
                        opening.blueprint().stakes(),
                        paper,
                        actor.subject(),
                        Optional.of(opening.id()),
                        new Policies(foundation).current(school, tx).version(),
                        opening.blueprint().module(),
                        now);
        var sittings = new SittingRepository(tx, school.id());
        sittings.insert(
                new Sitting.Open(
                        facts, Optional.of(now.plusSeconds(60L * opening.blueprint().minutes()))));
        sittings.openSeat(facts.id(), actor.session(), now);
        sittings.note(
                foundation.ids().next(), facts.id(), "started", Optional.of(actor.subject()), now);
        return facts.id();
    }

    /// Returns a sitting of the actor's, in whatever state; a test whose time is over is handed in
    /// first.
    public Sitting getSitting(Actor actor, UUID id) {
        closeOverdue(actor.school().id());
        return inSchool(actor, tx -> getSitting(tx, actor, id, Action.SIT));
    }

    private static Sitting getSitting(DSLContext tx, Actor actor, UUID id, Action action) {
        actor.requireAtAll(action);
        Sitting sitting =
                new SittingRepository(tx, actor.school().id())
                        .findSitting(id)
                        .orElseThrow(Sittings::noSitting);
        actor.requireFor(action, sitting.facts().subject());
        if (sitting.facts().stakes() == Stakes.PRACTICE) {
            throw noSitting();
        }
        return sitting;
    }

    private static Refusal noSitting() {
        return new Refusal.NotFound("There is no such sitting, or it is not yours to see.");
    }

    /// Opens a sitting on this device: the paper without keys, and what was given so far. Another
    /// device than the last one gets the next seat.
    ///
    /// @throws Refusal.Conflict if it is handed in or annulled
    public OpenSitting open(Actor actor, UUID id) {
        closeOverdue(actor.school().id());
        return inSchool(
                actor,
                tx ->
                        switch (getSitting(tx, actor, id, Action.SIT)) {
                            case Sitting.Open open -> seating.open(tx, actor, open);
                            case Sitting.HandedIn handedIn ->
                                    throw new Refusal.Conflict(
                                            "This test was handed in. Look at its result.");
                            case Sitting.Annulled annulled ->
                                    throw new Refusal.Conflict(
                                            "This sitting was set aside by your school.");
                        });
    }

    /// Keeps an answer and returns after its commit; see [Receipt].
    public Receipt answer(Actor actor, UUID sitting, GivenAnswer given) {
        actor.requireAtAll(Action.SIT);
        return answers.keep(actor, sitting, given);
    }

    /// Sets or takes away the flag of an item that the student wants to come back to.
    public void flag(Actor actor, UUID id, UUID item, boolean flagged) {
        inSchool(
                actor,
                tx -> {
                    Sitting sitting = getSitting(tx, actor, id, Action.SIT);
                    if (!(sitting instanceof Sitting.Open)) {
                        throw new Refusal.Conflict(
                                "This was handed in already; nothing can be flagged.");
                    }
                    Item known =
                            new ItemRepository(tx, actor.school().id())
                                    .findItem(id, item, actor.subject())
                                    .orElseThrow(
                                            () ->
                                                    new Refusal.NotFound(
                                                            "This sitting has no such question."));
                    var rows = new AnswerRepository(tx);
                    if (flagged) {
                        rows.flag(actor.school().id(), id, known.id());
                    } else {
                        rows.unflag(actor.school().id(), id, known.id());
                    }
                    return true;
                });
    }

    /// Hands a sitting in and marks it; handing in again changes nothing.
    public void handIn(Actor actor, UUID id) {
        closeOverdue(actor.school().id());
        inSchool(
                actor,
                tx -> {
                    Sitting sitting = getSitting(tx, actor, id, Action.SIT);
                    if (sitting instanceof Sitting.Annulled) {
                        throw new Refusal.Conflict("This sitting was set aside by your school.");
                    }
                    handIn.byStudent(tx, actor, sitting.facts());
                    return true;
                });
    }

    /// Hands in the tests of a school whose time is over, and returns how many. Any server may do
    /// it at any time.
    public int closeOverdue(SchoolId school) {
        return handIn.byClock(school);
    }

    /// Returns the result of a sitting, for its student and for staff.
    ///
    /// @throws Refusal.Conflict if it is not handed in
    public Result getResult(Actor actor, UUID id) {
        closeOverdue(actor.school().id());
        return inSchool(
                actor,
                tx ->
                        switch (getSitting(tx, actor, id, Action.READ_RESULT)) {
                            case Sitting.HandedIn handedIn ->
                                    scoring.resultOf(tx, actor.school().id(), handedIn);
                            case Sitting.Open open ->
                                    throw new Refusal.Conflict(
                                            "There is no result before the test is handed in.");
                            case Sitting.Annulled annulled ->
                                    throw new Refusal.Conflict(
                                            "This sitting was set aside and has no result.");
                        });
    }

    /// Returns the results of a person's counted sittings that were handed in, in the order they
    /// were begun.
    public List<Result> listResults(Actor actor, SubjectId subject) {
        actor.requireFor(Action.READ_RESULT, subject);
        closeOverdue(actor.school().id());
        return inSchool(actor, tx -> listResults(tx, actor.school().id(), subject));
    }

    /// As [#listResults], within a transaction of a caller who has asked for the right to it.
    public List<Result> listResults(DSLContext tx, SchoolId school, SubjectId subject) {
        List<Result> results = new ArrayList<>();
        for (Sitting sitting : new SittingRepository(tx, school).listCounted(subject)) {
            if (sitting instanceof Sitting.HandedIn handedIn) {
                results.add(scoring.resultOf(tx, school, handedIn));
            }
        }
        return results;
    }

    /// Returns the actor's sittings that are open now.
    public List<Sitting.Open> listOpen(Actor actor) {
        actor.requireAtAll(Action.SIT);
        closeOverdue(actor.school().id());
        return inSchool(
                actor,
                tx ->
                        new SittingRepository(tx, actor.school().id())
                                .listCounted(actor.subject()).stream()
                                        .filter(Sitting.Open.class::isInstance)
                                        .map(Sitting.Open.class::cast)
                                        .toList());
    }

    private <T> T inSchool(Actor actor, java.util.function.Function<DSLContext, T> work) {
        return foundation.database().inSchool(actor.school().id(), work);
    }
}
