package org.groundline.authoring;

import org.groundline.bank.Jurisdiction;
import org.groundline.bank.Module;
import org.groundline.bank.Objective;
import org.groundline.bank.Question;
import org.groundline.bank.Questions;
import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.ledger.Entry;
import org.groundline.ledger.EntryKind;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.School;
import org.jooq.DSLContext;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/// Whose air law a school teaches, and how far its questions on the law of its own country have
/// got.
///
/// What is shipped holds everywhere or in the packs that name their jurisdiction; the law of a
/// country is the school's to write, as nobody else answers for it. Until each point of national
/// law has a question of the school that a second person has approved, the pack is not live, and
/// air law can neither be finished nor signed off.
public final class AirLaw {
    private final Foundation foundation;
    private final SchoolBanks banks;

    public AirLaw(Foundation foundation, SchoolBanks banks) {
        this.foundation = foundation;
        this.banks = banks;
    }

    /// Whose air law a school teaches.
    ///
    /// @param country by ISO 3166-1, in two letters; the codes XA to XZ are free for invented ones
    /// @param packs the codes of shipped packs that hold there, too
    public record Choice(String country, Set<String> packs) {
        public Choice {
            packs = Set.copyOf(packs);
        }
    }

    /// A point of national law.
    ///
    /// @param asked what the school's questions must ask
    /// @param live how many questions of the school ask it today
    /// @param waiting how many of its questions are on their way
    public record Point(Objective objective, String asked, int live, int waiting) {}

    /// How far the school's pack has got.
    ///
    /// @param choice empty until the school has chosen
    public record Pack(Optional<Choice> choice, List<Point> points) {
        public Pack {
            points = List.copyOf(points);
        }

        /// Whether each point has a question.
        public boolean isLive() {
            return choice.isPresent() && points.stream().allMatch(point -> point.live() > 0);
        }
    }

    /// Returns the codes of the packs that are shipped.
    public List<String> shippedPacks() {
        return banks.shipped().all().stream()
                .flatMap(question -> question.jurisdiction().stream())
                .map(Jurisdiction::code)
                .distinct()
                .sorted()
                .toList();
    }

    /// Whether a module asks for national law.
    public boolean concerns(String module) {
        return banks.shipped().course().findModule(module).stream()
                .flatMap(AirLaw::nationalObjectives)
                .findAny()
                .isPresent();
    }

    /// Whether an objective asks for national law.
    public boolean isNational(String objective) {
        return banks.shipped().course().modules().stream()
                .flatMap(AirLaw::nationalObjectives)
                .anyMatch(known -> known.id().equals(objective));
    }

    /// Returns how far the pack of the actor's school has got.
    public Pack pack(Actor actor) {
        actor.require(Action.READ_BANK);
        return foundation.database().inSchool(actor.school().id(), tx -> pack(tx, actor.school()));
    }

    /// Whether the pack of a school is live, within a transaction.
    public boolean isLive(DSLContext tx, School school) {
        return pack(tx, school).isLive();
    }

    private Pack pack(DSLContext tx, School school) {
        Optional<Choice> choice = new OwnListRepository(tx, school.id()).findChoice();
        List<Question> live = nationalQuestions(tx, school, choice);
        List<Question> waiting = waiting(tx, school, choice);
        List<Point> points =
                banks.shipped().course().modules().stream()
                        .flatMap(AirLaw::nationalObjectives)
                        .map(objective -> point(objective, live, waiting))
                        .toList();
        return new Pack(choice, points);
    }

    private static Stream<Objective> nationalObjectives(Module module) {
        return module.topics().stream()
                .flatMap(topic -> topic.objectives().stream())
                .filter(objective -> objective.national().isPresent());
    }

    private static Point point(Objective objective, List<Question> live, List<Question> waiting) {
        return new Point(
                objective,
                objective.national().orElseThrow(),
                count(live, objective),
                count(waiting, objective));
    }

    private static int count(List<Question> questions, Objective objective) {
        return (int) questions.stream().filter(q -> q.objective().equals(objective.id())).count();
    }

    /// The school's own questions on the law of its country that are asked today.
    private List<Question> nationalQuestions(
            DSLContext tx, School school, Optional<Choice> choice) {
        Questions bank = banks.in(tx, school);
        return bank.own().stream()
                .filter(bank::asks)
                .filter(question -> isOf(question, choice))
                .toList();
    }

    private List<Question> waiting(DSLContext tx, School school, Optional<Choice> choice) {
        var lists = new OwnListRepository(tx, school.id()).lists();
        List<Question> waiting = new ArrayList<>();
        for (Life life : SchoolBanks.lives(tx, school, school.dayOf(foundation.now())).values()) {
            life.latest()
                    .filter(edition -> life.live().filter(edition::equals).isEmpty())
                    .filter(edition -> life.state(edition) != State.RETIRED)
                    .flatMap(edition -> banks.shipped().read(edition.text(), lists).question())
                    .filter(question -> isOf(question, choice))
                    .ifPresent(waiting::add);
        }
        return waiting;
    }

    private static boolean isOf(Question question, Optional<Choice> choice) {
        Optional<String> code = question.jurisdiction().map(Jurisdiction::code);
        return code.isPresent() && code.equals(choice.map(Choice::country));
    }

    /// Chooses from now on. What was asked before stays as it was.
    ///
    /// @throws Refusal.Invalid if there is no such country or pack
    public void choose(Actor actor, Choice choice) {
        actor.require(Action.CHANGE_POLICY);
        requireCountry(choice.country());
        if (!shippedPacks().containsAll(choice.packs())) {
            throw new Refusal.Invalid(
                    "packs", "The packs are " + String.join(", ", shippedPacks()) + ".");
        }
        foundation.database().doInSchool(actor.school().id(), tx -> choose(tx, actor, choice));
    }

    private static void requireCountry(String code) {
        if (!code.matches("X[A-Z]") && !Arrays.asList(Locale.getISOCountries()).contains(code)) {
            throw new Refusal.Invalid(
                    "country",
                    "Write the country’s two capital letters, such as AT, CH or FR (ISO 3166-1).");
        }
    }

    private void choose(DSLContext tx, Actor actor, Choice choice) {
        var by = actor.subject();
        new OwnListRepository(tx, actor.school().id())
                .insert(foundation.ids().next(), choice, by, foundation.now());
        Map<String, Object> facts =
                Map.of(
                        "country",
                        choice.country(),
                        "packs",
                        List.copyOf(new TreeSet<>(choice.packs())));
        foundation
                .ledger()
                .write(
                        tx,
                        actor.school().id(),
                        new Entry(
                                EntryKind.POLICY,
                                foundation.now(),
                                Optional.empty(),
                                Optional.of(by),
                                facts));
        audit(tx, actor, by);
    }

    private void audit(DSLContext tx, Actor actor, SubjectId by) {
        foundation
                .audit()
                .write(
                        tx,
                        actor.school().id(),
                        Optional.of(by),
                        Optional.empty(),
                        Action.CHANGE_POLICY.word(),
                        "jurisdiction");
    }
}
