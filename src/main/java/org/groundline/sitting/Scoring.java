package org.groundline.sitting;

import static java.util.Objects.requireNonNull;

import org.groundline.bank.Key;
import org.groundline.database.SchoolId;
import org.groundline.ledger.Entry;
import org.groundline.ledger.EntryKind;
import org.groundline.ledger.Foundation;
import org.groundline.school.Policies;
import org.groundline.school.PolicyRules;
import org.groundline.sitting.Result.ItemResult;
import org.groundline.sitting.Result.TopicMarks;
import org.groundline.sitting.ScoringRepository.MarkedItem;
import org.groundline.sitting.ScoringRepository.Run;
import org.jooq.DSLContext;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

/// Marks sittings that were handed in, and puts their results together.
final class Scoring {
    private final Foundation foundation;
    private final Policies policies;

    Scoring(Foundation foundation) {
        this.foundation = foundation;
        this.policies = new Policies(foundation);
    }

    /// Marks a sitting in the transaction that hands it in, and enters the result into the ledger.
    void score(DSLContext tx, SchoolId school, Sitting.Facts sitting, String reason) {
        PolicyRules rules = policies.getVersion(school, tx, sitting.policy()).rules();
        List<MarkedItem> marks = marksOf(tx, school, sitting);
        int gained = marks.stream().mapToInt(m -> m.mark().hundredths()).sum();
        int possible = marks.stream().mapToInt(m -> m.mark().possible()).sum();
        var run =
                new Run(
                        foundation.ids().next(),
                        sitting.id(),
                        Marking.VERSION,
                        foundation.now(),
                        reason,
                        gained,
                        possible,
                        rules.passes(gained, possible));
        new ScoringRepository(tx, school).insert(run, sitting.subject(), marks);
        foundation.ledger().write(tx, school, entry(sitting, run));
    }

    private static Entry entry(Sitting.Facts sitting, Run run) {
        Map<String, Object> facts =
                Map.of(
                        "sitting", sitting.id().toString(),
                        "stakes", sitting.stakes().word(),
                        "module", sitting.scope(),
                        "policy", sitting.policy(),
                        "run", run.id().toString(),
                        "scoring", run.version(),
                        "hundredths", run.hundredths(),
                        "possible", run.possible(),
                        "passed", run.passed());
        return new Entry(
                EntryKind.RESULT,
                run.at(),
                Optional.of(sitting.subject()),
                Optional.empty(),
                facts);
    }

    private static List<MarkedItem> marksOf(DSLContext tx, SchoolId school, Sitting.Facts sitting) {
        Map<UUID, Key> keys = new KeyRepository(tx, school).keysOf(sitting.paper());
        Map<UUID, KeptAnswer> answers =
                new AnswerRepository(tx).countingAnswers(school, sitting.id());
        List<MarkedItem> marks = new ArrayList<>();
        for (Item item : new ItemRepository(tx, school).listItems(sitting.paper())) {
            Optional<KeptAnswer> answer = Optional.ofNullable(answers.get(item.id()));
            Mark mark =
                    Marking.mark(
                            requireNonNull(keys.get(item.id())), answer.map(KeptAnswer::reading));
            marks.add(new MarkedItem(item, mark, answer.map(KeptAnswer::clientId)));
        }
        return marks;
    }

    /// Puts the result of a sitting together: the marks that its current run decided, with what may
    /// be shown now.
    Result resultOf(DSLContext tx, SchoolId school, Sitting.HandedIn sitting) {
        Sitting.Facts facts = sitting.facts();
        var scoring = new ScoringRepository(tx, school);
        Run run =
                scoring.findCurrent(facts.id())
                        .orElseThrow(
                                () ->
                                        new IllegalStateException(
                                                "no marks of sitting " + facts.id()));
        Map<UUID, Key> keys = new KeyRepository(tx, school).keysOf(facts.paper());
        Map<UUID, KeptAnswer> answers =
                new AnswerRepository(tx).countingAnswers(school, facts.id());
        List<ItemResult> items =
                new ItemRepository(tx, school)
                        .listItems(facts.paper()).stream()
                                .map(item -> itemResult(item, keys, answers))
                                .toList();
        PolicyRules rules = policies.getVersion(school, tx, facts.policy()).rules();
        return new Result(
                sitting,
                rules,
                run.version(),
                run.hundredths(),
                run.possible(),
                run.passed(),
                topics(items),
                items);
    }

    private static ItemResult itemResult(
            Item item, Map<UUID, Key> keys, Map<UUID, KeptAnswer> answers) {
        Key key = requireNonNull(keys.get(item.id()));
        Optional<KeptAnswer> answer = Optional.ofNullable(answers.get(item.id()));
        return new ItemResult(
                item, key, Marking.mark(key, answer.map(KeptAnswer::reading)), answer);
    }

    private static List<TopicMarks> topics(List<ItemResult> items) {
        Map<String, TopicMarks> sums = new TreeMap<>();
        for (ItemResult item : items) {
            Mark mark = item.mark();
            sums.merge(
                    item.item().topic(),
                    new TopicMarks(item.item().topic(), mark.hundredths(), mark.possible()),
                    (a, b) ->
                            new TopicMarks(
                                    a.topic(),
                                    a.hundredths() + b.hundredths(),
                                    a.possible() + b.possible()));
        }
        return List.copyOf(sums.values());
    }
}
