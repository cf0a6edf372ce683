package org.groundline.bank;

import org.groundline.bank.Lists.TopicPlace;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;

/// Reads what fixed questions and numeric templates have in common.
final class HeadingReader {
    private final Lists lists;
    private final CitationReader citations;

    HeadingReader(Lists lists) {
        this.lists = lists;
        this.citations = new CitationReader(lists.sources());
    }

    Heading read(String id, Section section, TopicPlace place) {
        return new Heading(
                id,
                objective(section, place),
                place.topic(),
                place.module(),
                section.choice("level", Level.values(), Level::word),
                section.flag("safety-critical"),
                citations.citations(section));
    }

    private String objective(Section section, TopicPlace place) {
        String id = section.text("objective", "name the objective it asks about");
        lists.objectives()
                .refer(section, "objective", id)
                .map(Lists.Placed::place)
                .filter(other -> !other.equals(place) && isKnown(place))
                .ifPresent(other -> noteElsewhere(section, other, place));
        return id;
    }

    private boolean isKnown(TopicPlace place) {
        return lists.topics().find(place.topic()).isPresent();
    }

    private static void noteElsewhere(Section section, TopicPlace other, TopicPlace place) {
        section.note(
                Rule.OBJECTIVE_ELSEWHERE,
                "objective",
                "has an objective of topic " + other.topic() + " in a file of " + place.topic(),
                "move the question to a file of " + other.topic() + ", or name another objective");
    }
}
