package org.groundline.insight;

import static java.util.stream.Collectors.groupingBy;

import org.groundline.bank.Course;
import org.groundline.bank.Topic;
import org.groundline.insight.RateRepository.FirstMarks;
import org.groundline.ledger.Foundation;
import org.groundline.psychometrics.Proportion;
import org.groundline.psychometrics.Proportion.Cluster;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.People;
import org.groundline.school.Policies;
import org.groundline.school.PolicyRules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// Pass rates by topic.
///
/// How they are computed: each student counts once a module, in the first counted sitting of it. A
/// topic's rate is the share of those students who reached the pass mark within the topic, over
/// students whose sitting held enough items of it (by policy, ten). Where too few students had that
/// many, the share of items missed is given instead. Below five students nothing is said.
public final class PassRates {
    private final Foundation foundation;
    private final Course course;

    public PassRates(Foundation foundation, Course course) {
        this.foundation = foundation;
        this.course = course;
    }

    /// The rates of all topics in the order of the course.
    ///
    /// @param passMark in force now, in hundredths of a percent; drawn as the line to reach
    public record Rates(int passMark, List<TopicRate> topics) {
        public Rates {
            topics = List.copyOf(topics);
        }
    }

    /// Returns the rates of an intake, or of all students ever.
    public Rates byTopic(Actor actor, Optional<UUID> intake) {
        actor.require(Action.READ_RATES);
        intake.ifPresent(id -> new People(foundation).getIntake(actor.school(), id));
        PolicyRules rules = new Policies(foundation).current(actor.school()).rules();
        Map<String, List<FirstMarks>> marks =
                foundation
                        .database()
                        .inSchool(
                                actor.school().id(),
                                tx ->
                                        new RateRepository(tx, actor.school().id())
                                                .listFirstMarks(intake))
                        .stream()
                        .collect(groupingBy(FirstMarks::topic));
        List<TopicRate> topics =
                course.modules().stream()
                        .flatMap(m -> m.topics().stream())
                        .map(topic -> rate(topic, marks.getOrDefault(topic.id(), List.of()), rules))
                        .toList();
        return new Rates(rules.passMark(), topics);
    }

    private static TopicRate rate(Topic topic, List<FirstMarks> all, PolicyRules rules) {
        List<FirstMarks> full = all.stream().filter(m -> m.items() >= rules.topicItems()).toList();
        if (full.size() >= rules.studentsToSpeak()) {
            int reached = (int) full.stream().filter(PassRates::reached).count();
            return new TopicRate.Reached(
                    topic, full.size(), reached, Proportion.wilson(reached, full.size()));
        }
        if (all.size() >= rules.studentsToSpeak()) {
            List<Cluster> students =
                    all.stream().map(m -> new Cluster(m.items() - m.right(), m.items())).toList();
            return new TopicRate.Missed(
                    topic,
                    all.size(),
                    students.stream().mapToInt(Cluster::cases).sum(),
                    students.stream().mapToInt(Cluster::hits).sum(),
                    Proportion.clustered(students));
        }
        return new TopicRate.Silent(topic, all.size());
    }

    private static boolean reached(FirstMarks marks) {
        return PolicyRules.reaches(marks.passMark(), marks.hundredths(), marks.possible());
    }
}
