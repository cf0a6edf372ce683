package org.groundline.sitting;

import org.groundline.authoring.SchoolBanks;
import org.groundline.bank.Audience;
import org.groundline.bank.Key;
import org.groundline.bank.NumericQuestion;
import org.groundline.bank.Question;
import org.groundline.bank.Topic;
import org.groundline.database.SchoolId;
import org.groundline.database.Violation;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Policies;
import org.jooq.DSLContext;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.LongSupplier;

/// Practising a topic: one item at a time, the rationale after each answer. Counts for nothing.
public final class Practices {
    private final Foundation foundation;
    private final SchoolBanks banks;
    private final Posing posing;
    private final Answers answers;

    public Practices(Foundation foundation, SchoolBanks banks, AnswerWriter writer) {
        this(foundation, banks, writer, Posing.secureSeeds());
    }

    /// @param seeds what items are drawn with; whoever knows it can foretell every item
    public Practices(
            Foundation foundation, SchoolBanks banks, AnswerWriter writer, LongSupplier seeds) {
        this.foundation = foundation;
        this.banks = banks;
        this.posing = new Posing(foundation, banks, seeds);
        this.answers = new Answers(foundation, writer);
    }

    /// An item to be practised.
    ///
    /// @param seat the seat of this device and browser
    public record PracticeItem(UUID sitting, Item item, int seat) {}

    /// An item after its answer, with everything that explains it.
    public record Explained(UUID sitting, Item item, Key key, Mark mark, KeptAnswer answer) {}

    /// How far somebody has practised a topic: questions answered, and how many of them rightly.
    public record Progress(int answered, int right) {}

    /// Returns the item to be answered next: the one that waits for its answer, or a new one.
    ///
    /// @throws Refusal.NotFound if the course has no such topic
    public PracticeItem next(Actor actor, String topic) {
        actor.requireAtAll(Action.PRACTISE);
        Topic known =
                banks.shipped()
                        .course()
                        .findTopic(topic)
                        .orElseThrow(() -> new Refusal.NotFound("The course has no such topic."));
        try {
            return inSchool(actor, tx -> next(tx, actor, known));
        } catch (Violation e) {
            return inSchool(
                    actor,
                    tx -> next(tx, actor, known)); // another tab was faster; this finds its item
        }
    }

    private PracticeItem next(DSLContext tx, Actor actor, Topic topic) {
        SchoolId school = actor.school().id();
        var sittings = new SittingRepository(tx, school);
        Sitting.Facts facts =
                sittings.findOpenPractice(actor.subject(), topic.id())
                        .map(Sitting::facts)
                        .orElseGet(() -> begin(tx, actor, topic));
        int seat =
                sittings.findSeat(facts.id(), actor.session())
                        .orElseGet(
                                () ->
                                        sittings.openSeat(
                                                facts.id(), actor.session(), foundation.now()));
        List<Item> items = new ItemRepository(tx, school).listItems(facts.paper());
        Map<UUID, KeptAnswer> given = new AnswerRepository(tx).countingAnswers(school, facts.id());
        Item item =
                items.stream()
                        .filter(i -> !given.containsKey(i.id()))
                        .findFirst()
                        .orElseGet(() -> poseNext(tx, actor, facts, items.size() + 1));
        return new PracticeItem(facts.id(), item, seat);
    }

    private Sitting.Facts begin(DSLContext tx, Actor actor, Topic topic) {
        Instant now = foundation.now();
        var facts =
                new Sitting.Facts(
                        foundation.ids().next(),
                        Stakes.PRACTICE,
                        posing.beginPractice(tx, actor.school()),
                        actor.subject(),
                        Optional.empty(),
                        new Policies(foundation).current(actor.school(), tx).version(),
                        topic.id(),
                        now);
        new SittingRepository(tx, actor.school().id())
                .insert(new Sitting.Open(facts, Optional.empty()));
        return facts;
    }

    private Item poseNext(DSLContext tx, Actor actor, Sitting.Facts facts, int position) {
        Question question = leastRecent(tx, actor, facts);
        String language = QuestionLanguages.languageOf(tx, actor.school().id(), actor.subject());
        var next = new Posing.Next(facts.paper(), position, language);
        return posing.poseNext(tx, actor.school(), next, question);
    }

    /// The question of the topic that this person has not practised for longest; among those never
    /// practised, a drawn one.
    private Question leastRecent(DSLContext tx, Actor actor, Sitting.Facts facts) {
        List<Question> all =
                banks.in(tx, actor.school()).ofTopic(facts.scope()).stream()
                        .filter(Practices::isForStudents)
                        .toList();
        if (all.isEmpty()) {
            throw new Refusal.Conflict("There is no question on this topic yet.");
        }
        List<String> recent =
                new ItemRepository(tx, actor.school().id())
                        .listRecentQuestions(
                                actor.subject(), Stakes.PRACTICE, facts.scope(), 2 * all.size());
        return posing.shuffle(all).stream()
                .max(
                        Comparator.comparingInt(
                                q ->
                                        recent.contains(q.id())
                                                ? recent.indexOf(q.id())
                                                : Integer.MAX_VALUE))
                .orElseThrow();
    }

    private static boolean isForStudents(Question question) {
        return !(question instanceof NumericQuestion numeric)
                || numeric.audience() != Audience.INSTRUCTOR;
    }

    /// Keeps the answer to an item and explains it. The same answer sent twice is explained twice.
    public Explained answer(Actor actor, UUID sitting, GivenAnswer given) {
        actor.requireAtAll(Action.PRACTISE);
        requirePractice(actor, sitting);
        answers.keep(actor, sitting, given);
        return explain(actor, sitting, given.item());
    }

    private void requirePractice(Actor actor, UUID sitting) {
        inSchool(actor, tx -> getPractice(tx, actor, sitting));
    }

    private static Sitting getPractice(DSLContext tx, Actor actor, UUID id) {
        return new SittingRepository(tx, actor.school().id())
                .findSitting(id)
                .filter(
                        s ->
                                s.facts().stakes() == Stakes.PRACTICE
                                        && s.facts().subject().equals(actor.subject()))
                .orElseThrow(() -> new Refusal.NotFound("There is no such practice of yours."));
    }

    /// Explains an item that the actor has answered.
    ///
    /// @throws Refusal.Conflict if there is no answer yet: nothing is explained before
    public Explained explain(Actor actor, UUID sitting, UUID itemId) {
        actor.requireAtAll(Action.PRACTISE);
        return inSchool(
                actor,
                tx -> {
                    getPractice(tx, actor, sitting);
                    SchoolId school = actor.school().id();
                    Item item =
                            new ItemRepository(tx, school)
                                    .findItem(sitting, itemId, actor.subject())
                                    .orElseThrow(
                                            () ->
                                                    new Refusal.NotFound(
                                                            "This practice has no such question."));
                    KeptAnswer answer =
                            Optional.ofNullable(
                                            new AnswerRepository(tx)
                                                    .countingAnswers(school, sitting)
                                                    .get(itemId))
                                    .orElseThrow(
                                            () ->
                                                    new Refusal.Conflict(
                                                            "Answer the question first; then it is explained."));
                    Key key = new KeyRepository(tx, school).getKey(itemId);
                    Mark mark = Marking.mark(key, Optional.of(answer.reading()));
                    return new Explained(sitting, item, key, mark, answer);
                });
    }

    /// Returns how far the actor has practised each topic, by its id.
    public Map<String, Progress> progress(Actor actor) {
        actor.requireAtAll(Action.PRACTISE);
        return inSchool(
                actor,
                tx -> new PracticeRepository(tx, actor.school().id()).progressOf(actor.subject()));
    }

    private <T> T inSchool(Actor actor, Function<DSLContext, T> work) {
        return foundation.database().inSchool(actor.school().id(), work);
    }
}
