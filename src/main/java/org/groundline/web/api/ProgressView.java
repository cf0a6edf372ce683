package org.groundline.web.api;

import org.groundline.bank.Course;
import org.groundline.bank.Topic;
import org.groundline.sitting.Practices.Progress;

import java.util.List;
import java.util.Map;

/// How far somebody has practised, by topic, in the order of the course.
record ProgressView(List<TopicProgress> topics) {
    private static final Progress NONE = new Progress(0, 0);

    /// @param itemsAnswered practice items, each posed anew
    /// @param itemsRight of these, answered rightly
    record TopicProgress(String topic, int itemsAnswered, int itemsRight) {}

    static ProgressView of(Course course, Map<String, Progress> progress) {
        return new ProgressView(
                course.modules().stream()
                        .flatMap(m -> m.topics().stream())
                        .map(Topic::id)
                        .map(topic -> of(topic, progress.getOrDefault(topic, NONE)))
                        .toList());
    }

    private static TopicProgress of(String topic, Progress progress) {
        return new TopicProgress(topic, progress.answered(), progress.right());
    }
}
