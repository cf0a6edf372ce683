package org.groundline.web.author;

import org.groundline.bank.Level;
import org.groundline.bank.Misconception;
import org.groundline.bank.Module;
import org.groundline.bank.OwnLists;
import org.groundline.bank.Source;
import org.groundline.school.Actor;
import org.groundline.web.Doors;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/// What the form for a question offers to choose from.
///
/// @param objectives by module
/// @param ideas misconceptions, shipped and own, by id
/// @param sources shipped and own, by title
/// @param illustrations their names
public record EditChoices(
        List<Group> objectives,
        List<String> levels,
        List<Entry> ideas,
        List<Entry> sources,
        List<String> illustrations) {
    public EditChoices {
        objectives = List.copyOf(objectives);
        levels = List.copyOf(levels);
        ideas = List.copyOf(ideas);
        sources = List.copyOf(sources);
        illustrations = List.copyOf(illustrations);
    }

    /// A module with its objectives.
    public record Group(String name, List<Entry> entries) {}

    /// Something with an id.
    public record Entry(String id, String text) {}

    static EditChoices of(Doors doors, Actor actor) {
        OwnLists own = doors.ownWords().lists(actor);
        return new EditChoices(
                doors.bank().course().modules().stream().map(EditChoices::group).toList(),
                Arrays.stream(Level.values()).map(Level::word).toList(),
                Stream.concat(doors.bank().misconceptions().stream(), own.misconceptions().stream())
                        .sorted(Comparator.comparing(Misconception::id))
                        .map(idea -> new Entry(idea.id(), idea.wrong()))
                        .toList(),
                Stream.concat(doors.bank().sources().stream(), own.sources().stream())
                        .sorted(Comparator.comparing(Source::title))
                        .map(source -> new Entry(source.id(), source.title()))
                        .toList(),
                doors.bank().illustrations());
    }

    private static Group group(Module module) {
        return new Group(
                module.title(),
                module.topics().stream()
                        .flatMap(topic -> topic.objectives().stream())
                        .map(o -> new Entry(o.id(), o.id() + " " + o.text()))
                        .toList());
    }
}
