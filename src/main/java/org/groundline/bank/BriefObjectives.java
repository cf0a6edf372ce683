package org.groundline.bank;

import org.commonmark.node.Node;
import org.groundline.bank.Lists.Placed;
import org.groundline.bank.Lists.TopicPlace;
import org.groundline.bank.brief.BriefMarkdown;
import org.groundline.bank.brief.BriefRules;
import org.groundline.bank.brief.ObjectiveMarks;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/// Holds the marks of a brief against the objectives of its topic: it serves all of them and no
/// others.
record BriefObjectives(Lists lists, Notes notes, TopicPlace place) {
    void check(Node text, BriefRules rules) {
        Set<String> served = new HashSet<>();
        for (ObjectiveMarks marks : BriefMarkdown.all(text, ObjectiveMarks.class)) {
            for (String id : marks.objectives()) {
                check(id, rules.line(marks));
                served.add(id);
            }
        }
        List<String> missing =
                lists.objectives().values().stream()
                        .filter(o -> o.place().equals(place))
                        .map(o -> o.objective().id())
                        .filter(id -> !served.contains(id))
                        .toList();
        if (!missing.isEmpty()) {
            notes.add(
                    Rule.OBJECTIVE_NOT_SERVED,
                    1,
                    "the text serves no " + String.join(", ", missing),
                    "end the heading or paragraph that does with a mark such as {%s}"
                            .formatted(missing.getFirst()));
        }
    }

    private void check(String id, int line) {
        lists.objectives()
                .find(id, notes, line, "the text")
                .map(Placed::place)
                .filter(other -> !other.equals(place))
                .ifPresent(
                        other ->
                                notes.add(
                                        Rule.OBJECTIVE_ELSEWHERE,
                                        line,
                                        "the text marks %s of topic %s in the brief of %s"
                                                .formatted(id, other.topic(), place.topic()),
                                        "mark objectives of " + place.topic() + " only"));
    }
}
