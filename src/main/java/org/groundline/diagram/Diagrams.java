package org.groundline.diagram;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/// All kinds of drawings, by name.
public final class Diagrams {
    private static final List<Diagram> ALL =
            Stream.of(
                            GlidePath.kind(),
                            PolarTangent.kind(),
                            WindTriangle.kind(),
                            ForcesInGlide.kind(),
                            ForcesInTurn.kind(),
                            CircleFromAbove.kind(),
                            ReserveDescent.kind())
                    .map(Diagram::new)
                    .toList();

    private Diagrams() {}

    public static Optional<Diagram> find(String name) {
        return ALL.stream().filter(d -> d.name().equals(name)).findFirst();
    }

    public static List<Diagram> list() {
        return ALL;
    }
}
