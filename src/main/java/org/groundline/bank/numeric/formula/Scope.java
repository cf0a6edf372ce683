package org.groundline.bank.numeric.formula;

import org.groundline.measure.Dimension;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// The names a formula may use, each with its dimension. The place of a name is also the place of
/// its value among the values that a formula is computed from.
public record Scope(Map<String, Dimension> names) {
    public Scope {
        names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
    }

    /// This scope and one more name, in the last place.
    public Scope with(String name, Dimension dimension) {
        var more = new LinkedHashMap<>(names);
        more.put(name, dimension);
        return new Scope(more);
    }

    Optional<Expression> find(String name) {
        int slot = List.copyOf(names.keySet()).indexOf(name);
        return Optional.ofNullable(names.get(name)).map(d -> new Expression.Name(slot, d, name));
    }
}
