package org.groundline.school;

import org.groundline.database.SchoolId;
import org.groundline.database.SubjectId;
import org.groundline.database.Violation;
import org.groundline.error.Refusal;
import org.groundline.ledger.Entry;
import org.groundline.ledger.EntryKind;
import org.groundline.ledger.Foundation;
import org.jooq.DSLContext;

import java.util.Map;
import java.util.Optional;

/// The dated rules of each school.
public final class Policies {
    private final Foundation foundation;

    public Policies(Foundation foundation) {
        this.foundation = foundation;
    }

    /// Returns the policy in force now.
    public Policy current(School school) {
        return foundation.database().inSchool(school.id(), tx -> current(school, tx));
    }

    /// Returns the policy in force now, within a transaction.
    public Policy current(School school, DSLContext tx) {
        return new PolicyRepository(tx).inForceAt(school.id(), foundation.now());
    }

    /// Returns a version, within a transaction.
    public Policy getVersion(SchoolId school, DSLContext tx, int version) {
        return new PolicyRepository(tx).getVersion(school, version);
    }

    /// Enters the next version, in force from now on.
    ///
    /// @param since the version that the change is based on
    /// @throws Refusal.Stale if somebody entered another version meanwhile
    public Policy change(Actor actor, int since, PolicyRules rules) {
        actor.require(Action.CHANGE_POLICY);
        try {
            return foundation
                    .database()
                    .inSchool(actor.school().id(), tx -> enterNext(tx, actor, since, rules));
        } catch (Violation e) {
            throw stale();
        }
    }

    private Policy enterNext(DSLContext tx, Actor actor, int since, PolicyRules rules) {
        if (current(actor.school(), tx).version() != since) {
            throw stale();
        }
        var next = new Policy(since + 1, foundation.now(), rules);
        enter(tx, actor.school(), Optional.of(actor.subject()), next);
        return next;
    }

    private static Refusal stale() {
        return new Refusal.Stale(
                "The policy was changed by somebody else meanwhile. Look at it again before you change it.");
    }

    void enterDefault(School school) {
        var first = new Policy(1, foundation.now(), PolicyRules.DEFAULT);
        foundation
                .database()
                .doInSchool(school.id(), tx -> enter(tx, school, Optional.empty(), first));
    }

    private void enter(DSLContext tx, School school, Optional<SubjectId> by, Policy policy) {
        new PolicyRepository(tx).insert(school.id(), policy, by, foundation.now());
        PolicyRules rules = policy.rules();
        Map<String, Object> facts =
                Map.of(
                        "version", policy.version(),
                        "passMark", rules.passMark(),
                        "topicItems", rules.topicItems(),
                        "numericShare", rules.numericShare(),
                        "studentsToSpeak", rules.studentsToSpeak());
        foundation
                .ledger()
                .write(
                        tx,
                        school.id(),
                        new Entry(EntryKind.POLICY, policy.inForce(), Optional.empty(), by, facts));
        foundation
                .audit()
                .write(
                        tx,
                        school.id(),
                        by,
                        Optional.empty(),
                        Action.CHANGE_POLICY.word(),
                        "policy " + policy.version());
    }
}
