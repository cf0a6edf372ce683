package org.groundline.insight;

import org.groundline.bank.Topic;
import org.groundline.psychometrics.Interval;

/// What may be said about a topic.
public sealed interface TopicRate {
    Topic topic();

    /// Enough students, each with enough items of the topic: the share of students who reached the
    /// mark in it.
    ///
    /// @param interval Wilson's, 95 %, over students
    record Reached(Topic topic, int students, int reached, Interval interval)
            implements TopicRate {}

    /// Enough students, but too few items each to say who reached the mark: the share of items
    /// missed.
    ///
    /// @param interval 95 %, clustered by student
    record Missed(Topic topic, int students, int items, int missed, Interval interval)
            implements TopicRate {}

    /// Too few students to say anything.
    record Silent(Topic topic, int students) implements TopicRate {}
}
