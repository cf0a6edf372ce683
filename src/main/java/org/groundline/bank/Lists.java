package org.groundline.bank;

import org.groundline.bank.file.Rule;
import org.groundline.diagram.Illustration;

/// What questions may refer to.
record Lists(
        Register<Placed> objectives,
        Register<TopicPlace> topics,
        Register<Misconception> misconceptions,
        Register<Source> sources,
        Register<Illustration> illustrations,
        Register<String> questions) {

    /// An objective and where in the course it stands.
    record Placed(Objective objective, TopicPlace place) {}

    record TopicPlace(String topic, String module) {}

    /// The misconception with this id; one without texts where the bank names none such, which a
    /// finding says already.
    Misconception idea(String id) {
        return misconceptions.find(id).orElse(new Misconception(id, "", "", ""));
    }

    static Lists empty() {
        return new Lists(
                new Register<>("objective", SyllabusFile.NAME, Rule.OBJECTIVE_UNKNOWN),
                new Register<>("topic", SyllabusFile.NAME, Rule.TOPIC_UNKNOWN),
                new Register<>(
                        "misconception", MisconceptionsFile.NAME, Rule.MISCONCEPTION_UNKNOWN),
                new Register<>("source", SourcesFile.NAME, Rule.SOURCE_UNKNOWN),
                new Register<>(
                        "illustration", "the folder illustrations", Rule.ILLUSTRATION_UNKNOWN),
                new Register<>("question", "a topic file", Rule.VALUE));
    }
}
