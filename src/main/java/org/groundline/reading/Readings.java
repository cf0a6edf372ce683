package org.groundline.reading;

import org.groundline.bank.Brief;
import org.groundline.bank.Questions;
import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.reading.ReadingRepository.Acknowledgement;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.People;
import org.jooq.DSLContext;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// The briefs of topics and who has read them. Nobody is kept from anything for not having read.
public final class Readings {
    private final Foundation foundation;
    private final Questions bank;
    private final People people;

    public Readings(Foundation foundation, Questions bank) {
        this.foundation = foundation;
        this.bank = bank;
        this.people = new People(foundation);
    }

    /// Returns a topic's brief.
    ///
    /// @throws Refusal.NotFound if there is no such topic, or no brief for it yet
    public Brief getBrief(Actor actor, String topic) {
        actor.requireAtAll(Action.READ_BRIEF);
        if (bank.course().findTopic(topic).isEmpty()) {
            throw new Refusal.NotFound("The course has no such topic.");
        }
        return bank.findBrief(topic)
                .orElseThrow(() -> new Refusal.NotFound("This topic has no brief yet."));
    }

    /// Returns the briefs of a module in the order of its topics; there may be none yet.
    ///
    /// @throws Refusal.NotFound if the course has no such module
    public List<Brief> listBriefs(Actor actor, String module) {
        actor.requireAtAll(Action.READ_BRIEF);
        if (bank.course().findModule(module).isEmpty()) {
            throw new Refusal.NotFound("The course has no such module.");
        }
        return bank.briefsOf(module);
    }

    /// Returns whether the actor has read a brief.
    public Reading getOwn(Actor actor, Brief brief) {
        actor.requireAtAll(Action.READ_BRIEF);
        return reading(brief, acknowledged(actor, actor.subject()));
    }

    /// Returns what the actor has read of all briefs there are, by topic in the order of the
    /// course.
    public Map<String, Reading> listOwn(Actor actor) {
        actor.requireAtAll(Action.READ_BRIEF);
        return readings(acknowledged(actor, actor.subject()));
    }

    /// Returns what a person has read of all briefs there are, by topic in the order of the course;
    /// for the person and for staff.
    ///
    /// @throws Refusal.NotFound if there is no such person, or none the actor may know of
    public Map<String, Reading> listOf(Actor actor, SubjectId subject) {
        actor.requireFor(Action.READ_COURSE, subject);
        SubjectId present = people.getPerson(actor.school(), subject).subject();
        return readings(acknowledged(actor, present));
    }

    private Map<String, Reading> readings(List<Acknowledgement> acknowledged) {
        Map<String, Reading> readings = new LinkedHashMap<>();
        bank.course().modules().stream()
                .flatMap(module -> bank.briefsOf(module.id()).stream())
                .forEach(brief -> readings.put(brief.topic(), reading(brief, acknowledged)));
        return Collections.unmodifiableMap(readings);
    }

    /// Keeps that the actor has read a brief; more than once changes nothing.
    ///
    /// @param version of the brief that was read
    /// @throws Refusal.NotFound if there is no such brief
    /// @throws Refusal.Conflict if the brief is another one by now
    public void acknowledge(Actor actor, String topic, String version) {
        actor.requireAtAll(Action.ACKNOWLEDGE_BRIEF);
        if (!getBrief(actor, topic).version().equals(version)) {
            throw new Refusal.Conflict(
                    "The brief has changed since you opened it. Read it as it is now, then say so"
                            + " again.");
        }
        var acknowledgement = new Acknowledgement(topic, version, foundation.now());
        foundation
                .database()
                .doInSchool(
                        actor.school().id(),
                        tx -> rows(tx, actor).insertIfNew(actor.subject(), acknowledgement));
    }

    private List<Acknowledgement> acknowledged(Actor actor, SubjectId subject) {
        return foundation
                .database()
                .inSchool(actor.school().id(), tx -> rows(tx, actor).listOf(subject));
    }

    private static ReadingRepository rows(DSLContext tx, Actor actor) {
        return new ReadingRepository(tx, actor.school().id());
    }

    private static Reading reading(Brief brief, List<Acknowledgement> acknowledged) {
        String version = brief.version();
        Reading reading = new Reading.Unread();
        for (Acknowledgement each : acknowledged) {
            if (each.topic().equals(brief.topic()) && each.version().equals(version)) {
                return new Reading.Current(each.at());
            }
            if (each.topic().equals(brief.topic())) {
                reading = new Reading.Changed(each.at());
            }
        }
        return reading;
    }
}
