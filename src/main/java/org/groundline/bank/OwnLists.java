package org.groundline.bank;

import java.util.List;

/// What a school's own questions may refer to beside what is shipped.
public record OwnLists(List<Misconception> misconceptions, List<Source> sources) {
    public static final OwnLists NONE = new OwnLists(List.of(), List.of());

    public OwnLists {
        misconceptions = List.copyOf(misconceptions);
        sources = List.copyOf(sources);
    }
}
