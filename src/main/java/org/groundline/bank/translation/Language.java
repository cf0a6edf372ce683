package org.groundline.bank.translation;

import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/// All translations into one language.
public final class Language {
    private final String tag;
    private final List<Translation> all;
    private final Map<Originals.Name, Translation> byName;

    /// @param tag a BCP 47 tag, such as `de`
    public Language(String tag, List<Translation> all) {
        this.tag = tag;
        this.all = List.copyOf(all);
        this.byName =
                this.all.stream()
                        .collect(toMap(t -> Originals.Name.of(t.original()), t -> t, (a, b) -> a));
    }

    public String tag() {
        return tag;
    }

    public List<Translation> all() {
        return all;
    }

    /// The translation, however old, or empty where there is none.
    public Optional<Translation> find(Kind kind, String id) {
        return Optional.ofNullable(byName.get(new Originals.Name(kind, id)));
    }

    /// The translation that may be shown, or empty where there is none that follows the English.
    public Optional<Translation> findCurrent(Kind kind, String id) {
        return find(kind, id).filter(t -> t.state() == State.CURRENT);
    }

    public State state(Original original) {
        return find(original.kind(), original.id()).map(Translation::state).orElse(State.MISSING);
    }
}
