package org.groundline.bank;

import java.util.List;
import java.util.Map;

/// What a school's own questions may refer to beside what is shipped.
public record OwnLists(List<Misconception> misconceptions, List<Source> sources) {
    public static final OwnLists NONE = new OwnLists(List.of(), List.of());

    public OwnLists {
        misconceptions = List.copyOf(misconceptions);
        sources = List.copyOf(sources);
    }

    /// The lists as files in the form of the bank's, by their names; none for an empty list.
    public Map<String, String> files() {
        return ListEntries.files(this);
    }

    /// What is wrong with a misconception as it was typed, in sentences; nothing for a sound one.
    public static List<String> problems(Misconception idea) {
        return ListEntries.problems(idea);
    }

    /// What is wrong with a source as it was typed, in sentences; nothing for a sound one.
    public static List<String> problems(Source source) {
        return ListEntries.problems(source);
    }
}
