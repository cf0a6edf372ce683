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
    private static final String OWN = "the school's own list";

    /// An objective and where in the course it stands.
    record Placed(Objective objective, TopicPlace place) {}

    record TopicPlace(String topic, String module) {}

    /// The misconception with this id; one without texts where the bank names none such, which a
    /// finding says already.
    Misconception idea(String id) {
        return misconceptions.find(id).orElse(new Misconception(id, "", "", ""));
    }

    /// The same lists with a school's own entries, and no question yet, so that a question may be
    /// written again under its id. Nothing that is read against them is noted in these.
    Lists forManuscript(OwnLists own) {
        Register<Misconception> ideas = misconceptions.copy();
        own.misconceptions().forEach(idea -> ideas.add(idea.id(), idea, OWN));
        Register<Source> books = sources.copy();
        own.sources().forEach(source -> books.add(source.id(), source, OWN));
        return new Lists(
                objectives.copy(),
                topics.copy(),
                ideas,
                books,
                illustrations.copy(),
                empty().questions());
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
