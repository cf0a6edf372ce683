package org.groundline.bank;

import org.groundline.bank.file.Nearest;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/// Everything of one kind that a bank names by an id, where it stands and whether anything refers
/// to it, while a bank is being checked. Several files may refer to its entries at the same time,
/// one after the other may add to them.
final class Register<T> {
    private final String noun;
    private final String list;
    private final Rule unknown;
    private final Map<String, Entry<T>> entries = new LinkedHashMap<>();
    private final Set<String> used = ConcurrentHashMap.newKeySet();
    private boolean readable = true;

    /// The same entries, to be added to and referred to apart from these.
    Register<T> copy() {
        Register<T> copy = new Register<>(noun, list, unknown);
        copy.entries.putAll(entries);
        copy.readable = readable;
        return copy;
    }

    record Entry<T>(T value, String file, int line) {}

    /// @param noun what the entries are called in messages
    /// @param list where an author adds one
    /// @param unknown the rule that a reference to nothing breaks
    Register(String noun, String list, Rule unknown) {
        this.noun = noun;
        this.list = list;
        this.unknown = unknown;
    }

    /// Enters a value, or notes that its id is taken; whether it was entered.
    boolean add(String id, T value, String file, Section section) {
        Entry<T> entry = new Entry<>(value, file, section.line("id"));
        Entry<T> earlier = entries.putIfAbsent(id, entry);
        if (earlier != null) {
            section.note(
                    Rule.ID_TWICE,
                    "id",
                    "has the id of another " + noun,
                    "%s line %d has it already, choose another"
                            .formatted(earlier.file(), earlier.line()));
        }
        return earlier == null;
    }

    /// Enters a value whose id is the name of its file, so that no other can have it.
    void add(String id, T value, String file) {
        entries.put(id, new Entry<>(value, file, 1));
    }

    /// Its file could not be read, so that nothing can be said about references.
    void close() {
        readable = false;
    }

    /// What a key of the section refers to, or empty after noting that it refers to nothing.
    Optional<T> refer(Section section, String key, String id) {
        used.add(id);
        Optional<T> found = find(id);
        if (found.isEmpty() && readable && !id.isEmpty()) {
            String problem = "names the unknown " + noun + " '" + id + "'";
            String remedy = Nearest.remedy(id, entries.keySet(), "add it to " + list);
            section.note(unknown, key, problem, remedy);
        }
        return found;
    }

    /// What a text names, or empty after noting that it names nothing; it does not count as use.
    ///
    /// @param who names it, as messages shall call them
    Optional<T> find(String id, Notes notes, int line, String who) {
        Optional<T> found = find(id);
        if (found.isEmpty() && readable) {
            String problem = who + " names the unknown " + noun + " '" + id + "'";
            String remedy = Nearest.remedy(id, entries.keySet(), "add it to " + list);
            notes.add(unknown, line, problem, remedy);
        }
        return found;
    }

    /// Something refers to this id, whether or not it is here.
    void use(String id) {
        used.add(id);
    }

    /// Those of the ids that something refers to and that are not here.
    List<String> missing(List<String> ids) {
        return ids.stream()
                .filter(id -> readable && used.contains(id) && !entries.containsKey(id))
                .toList();
    }

    Optional<T> find(String id) {
        return Optional.ofNullable(entries.get(id)).map(Entry::value);
    }

    List<Entry<T>> unused() {
        return without(used);
    }

    /// All entries but those with these ids.
    List<Entry<T>> without(Set<String> ids) {
        return entries.entrySet().stream()
                .filter(e -> !ids.contains(e.getKey()))
                .map(Map.Entry::getValue)
                .toList();
    }

    List<String> ids() {
        return List.copyOf(entries.keySet());
    }

    List<T> values() {
        return entries.values().stream().map(Entry::value).toList();
    }
}
