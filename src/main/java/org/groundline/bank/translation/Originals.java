package org.groundline.bank.translation;

import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/// All that can be translated.
public final class Originals {
    private final List<Original> all;
    private final Set<String> staying;
    private final Map<Name, Original> byName;

    /// What one original is called by.
    record Name(Kind kind, String id) {
        static Name of(Original original) {
            return new Name(original.kind(), original.id());
        }
    }

    /// @param all in the order of the bank's files
    /// @param staying the ids of the questions that stay in English
    public Originals(List<Original> all, Set<String> staying) {
        this.all = List.copyOf(all);
        this.staying = Set.copyOf(staying);
        this.byName = this.all.stream().collect(toMap(Name::of, original -> original));
    }

    public List<Original> all() {
        return all;
    }

    Optional<Original> find(Kind kind, String id) {
        return Optional.ofNullable(byName.get(new Name(kind, id)));
    }

    boolean staysEnglish(Kind kind, String id) {
        return kind == Kind.QUESTION && staying.contains(id);
    }

    List<String> ids(Kind kind) {
        return all.stream().filter(o -> o.kind() == kind).map(Original::id).toList();
    }

    /// The originals by their file, each file's in its order.
    Map<String, List<Original>> byFile() {
        Map<String, List<Original>> files = new TreeMap<>();
        for (Original original : all) {
            files.computeIfAbsent(original.file(), f -> new ArrayList<>()).add(original);
        }
        return files;
    }
}
