package org.groundline.sitting;

import org.groundline.authoring.SchoolBanks;
import org.groundline.bank.Module;
import org.groundline.bank.Questions;
import org.groundline.bank.Topic;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.People;
import org.groundline.school.Policies;
import org.groundline.school.PolicyRules;
import org.jooq.DSLContext;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.BooleanSupplier;

/// Tests opened for intakes by staff.
public final class Openings {
    private static final int SECONDS_AN_ITEM = 90;
    private static final Duration LONGEST_WINDOW = Duration.ofDays(14);

    private final Foundation foundation;
    private final SchoolBanks banks;
    private final BooleanSupplier mayCount;

    /// @param mayCount whether this server may hold tests that count now: its clock is right and
    ///   commits are durable
    public Openings(Foundation foundation, SchoolBanks banks, BooleanSupplier mayCount) {
        this.foundation = foundation;
        this.banks = banks;
        this.mayCount = mayCount;
    }

    /// What is needed to open a test.
    ///
    /// @param window how long it may be begun, counted from now
    /// @param place where it is sat; may be empty
    public record NewOpening(String module, UUID intake, Duration window, String place) {}

    /// Opens the progress test of a module for an intake, from now on.
    public Opening open(Actor actor, NewOpening wish) {
        actor.require(Action.OPEN_TEST);
        requireCountable();
        Module module =
                banks.shipped()
                        .course()
                        .findModule(wish.module())
                        .orElseThrow(
                                () ->
                                        new Refusal.Invalid(
                                                "module", "The course has no such module."));
        new People(foundation).getIntake(actor.school(), wish.intake());
        requireSensible(wish);
        return foundation
                .database()
                .inSchool(actor.school().id(), tx -> open(tx, actor, module, wish));
    }

    private Opening open(DSLContext tx, Actor actor, Module module, NewOpening wish) {
        Instant now = foundation.now();
        var rows = new OpeningRepository(tx, actor.school().id());
        PolicyRules rules = new Policies(foundation).current(actor.school(), tx).rules();
        Blueprint blueprint =
                rows.findBlueprint(Stakes.PROGRESS, module.id())
                        .orElseGet(
                                () ->
                                        enterDefault(
                                                rows, banks.in(tx, actor.school()), module, rules));
        var opening =
                new Opening(
                        foundation.ids().next(),
                        blueprint,
                        wish.intake(),
                        actor.subject(),
                        now,
                        now.plus(wish.window()),
                        wish.place().strip());
        rows.insert(opening);
        foundation
                .audit()
                .write(
                        tx,
                        actor.school().id(),
                        Optional.of(actor.subject()),
                        Optional.empty(),
                        Action.OPEN_TEST.word(),
                        "opening " + opening.id());
        return opening;
    }

    /// The progress test that a school has until it enters its own: from each topic of the module
    /// as many items as its pass rate needs, one and a half minutes each, a sixth of them
    /// safety-critical.
    private Blueprint enterDefault(
            OpeningRepository rows, Questions bank, Module module, PolicyRules rules) {
        Map<String, Integer> topics = new TreeMap<>();
        for (Topic topic : module.topics()) {
            topics.put(topic.id(), Math.min(rules.topicItems(), bank.ofTopic(topic.id()).size()));
        }
        int items = topics.values().stream().mapToInt(Integer::intValue).sum();
        var blueprint =
                new Blueprint(
                        foundation.ids().next(),
                        Stakes.PROGRESS,
                        "Progress test: " + module.title(),
                        module.id(),
                        Math.ceilDiv(items * SECONDS_AN_ITEM, 60),
                        topics,
                        items / 6,
                        items * rules.numericShare() / 100);
        rows.insertBlueprint(blueprint, foundation.now());
        return blueprint;
    }

    private static void requireSensible(NewOpening wish) {
        if (wish.window().isNegative()
                || wish.window().isZero()
                || wish.window().compareTo(LONGEST_WINDOW) > 0) {
            throw new Refusal.Invalid(
                    "window", "A test is open for between one minute and fourteen days.");
        }
        if (wish.place().length() > 120) {
            throw new Refusal.Invalid("place", "A place has at most 120 letters.");
        }
    }

    /// Refuses while this server must not hold tests that count.
    void requireCountable() {
        if (!mayCount.getAsBoolean()) {
            throw new Refusal.Conflict(
                    "No test that counts can be held now: the server's clock or its database is not safe. The operator"
                            + " finds the reason on the page /ready.");
        }
    }

    /// Returns all tests that were opened, the newest first.
    public List<Opening> listOpenings(Actor actor) {
        actor.require(Action.READ_OPENING);
        return foundation
                .database()
                .inSchool(
                        actor.school().id(),
                        tx -> new OpeningRepository(tx, actor.school().id()).listAll());
    }

    /// Returns the tests that were opened for the actor's own intakes, the newest first.
    public List<Opening> listMine(Actor actor) {
        actor.requireAtAll(Action.SIT);
        return foundation
                .database()
                .inSchool(
                        actor.school().id(),
                        tx ->
                                new OpeningRepository(tx, actor.school().id())
                                        .listFor(actor.subject()));
    }
}
