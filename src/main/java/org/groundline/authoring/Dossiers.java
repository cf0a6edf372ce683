package org.groundline.authoring;

import org.groundline.authoring.Event.Kind;
import org.groundline.bank.OwnLists;
import org.groundline.bank.Question;
import org.groundline.bank.Questions;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/// The questions of a school as its staff look at them, with all that happened to them.
public final class Dossiers {
    private final Foundation foundation;
    private final SchoolBanks banks;

    public Dossiers(Foundation foundation, SchoolBanks banks) {
        this.foundation = foundation;
        this.banks = banks;
    }

    /// A question as it stands in a list.
    ///
    /// @param question what its latest edition reads as, or the shipped question; empty for a text
    ///   with errors
    /// @param latest the latest edition's state; empty where there is only the shipped question
    /// @param asked whether students are asked a question of this id today
    public record Listed(
            String id,
            Optional<Question> question,
            Optional<State> latest,
            boolean shipped,
            boolean asked,
            boolean withdrawn) {}

    /// Returns all questions of the school, by id.
    public List<Listed> list(Actor actor) {
        actor.require(Action.READ_BANK);
        return Desk.open(foundation, banks, actor, Dossiers::list);
    }

    private static List<Listed> list(Desk desk) {
        var school = desk.actor().school();
        Map<String, Life> lives =
                SchoolBanks.lives(desk.tx(), school, school.dayOf(desk.foundation().now()));
        OwnLists lists = new OwnListRepository(desk.tx(), school.id()).lists();
        Questions shipped = desk.banks().shipped();
        Questions asked = desk.banks().in(desk.tx(), school);
        var ids = new TreeSet<>(lives.keySet());
        shipped.all().forEach(question -> ids.add(question.id()));
        return ids.stream()
                .map(
                        id -> {
                            Optional<Life> life = Optional.ofNullable(lives.get(id));
                            return new Listed(
                                    id,
                                    life.flatMap(Life::latest).isPresent()
                                            ? life.flatMap(Life::latest)
                                                    .flatMap(e -> read(shipped, e, lists))
                                            : shipped.findQuestion(id),
                                    life.flatMap(l -> l.latest().map(l::state)),
                                    shipped.findQuestion(id).isPresent(),
                                    asked.findQuestion(id).filter(asked::asks).isPresent(),
                                    life.filter(Life::isWithdrawn).isPresent());
                        })
                .toList();
    }

    private static Optional<Question> read(Questions shipped, Edition edition, OwnLists lists) {
        return shipped.read(edition.text(), lists).question();
    }

    /// Returns all that is known about a question.
    ///
    /// @throws org.groundline.error.Refusal.NotFound if nothing is
    public Dossier get(Actor actor, String question) {
        actor.require(Action.READ_BANK);
        return Desk.open(
                foundation,
                banks,
                actor,
                desk -> {
                    desk.requireKnown(question);
                    Life life = desk.life(question);
                    Questions asked = banks.in(desk.tx(), actor.school());
                    return new Dossier(
                            question,
                            banks.shipped().findQuestion(question),
                            asked.findQuestion(question).filter(asked::asks),
                            life.editions().stream().map(e -> stand(desk, life, e)).toList(),
                            life.isWithdrawn(),
                            life.events(),
                            desk.rows().listRemarks(question));
                });
    }

    private static Dossier.Stand stand(Desk desk, Life life, Edition edition) {
        return new Dossier.Stand(
                edition,
                life.state(edition),
                life.validity(edition),
                life.find(edition, Kind.APPROVED)
                        .or(() -> life.find(edition, Kind.SENT_BACK))
                        .map(Event::actor),
                desk.read(edition.text()).question());
    }
}
