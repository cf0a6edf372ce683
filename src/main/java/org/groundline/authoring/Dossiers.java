package org.groundline.authoring;

import org.groundline.authoring.Event.Kind;
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
    private final Desks desks;

    public Dossiers(Foundation foundation, SchoolBanks banks) {
        this.desks = new Desks(foundation, banks);
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
        return desks.open(actor, Dossiers::list);
    }

    private static List<Listed> list(Desk desk) {
        Map<String, Life> lives = desk.lives();
        Questions bank = desk.bank();
        var ids = new TreeSet<>(lives.keySet());
        desk.banks().shipped().all().forEach(question -> ids.add(question.id()));
        return ids.stream()
                .map(id -> listed(desk, bank, id, Optional.ofNullable(lives.get(id))))
                .toList();
    }

    private static Listed listed(Desk desk, Questions bank, String id, Optional<Life> life) {
        Optional<Edition> latest = life.flatMap(Life::latest);
        Optional<Question> shipped = desk.banks().shipped().findQuestion(id);
        return new Listed(
                id,
                latest.isPresent() ? latest.flatMap(desk::question) : shipped,
                life.flatMap(l -> latest.map(l::state)),
                shipped.isPresent(),
                bank.findAsked(id).isPresent(),
                life.filter(Life::isWithdrawn).isPresent());
    }

    /// Returns all that is known about a question.
    ///
    /// @throws org.groundline.error.Refusal.NotFound if nothing is
    public Dossier get(Actor actor, String question) {
        actor.require(Action.READ_BANK);
        return desks.open(
                actor,
                desk -> {
                    desk.requireKnown(question);
                    Life life = desk.life(question);
                    return new Dossier(
                            question,
                            desk.banks().shipped().findQuestion(question),
                            desk.bank().findAsked(question),
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
                desk.question(edition));
    }
}
