package org.groundline.bank;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;

import java.util.List;

/// What a student sees of an item. It is kept as written by [Frozen] for ever, so a component is
/// never renamed and never changes its meaning; a new one gets a default there.
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Shown.Choice.class, name = "choice"),
    @JsonSubTypes.Type(value = Shown.Number.class, name = "number")
})
public sealed interface Shown {
    String stem();

    /// The drawing beside the stem, or none; it tells nothing that only marking knows.
    List<Figure> figures();

    /// Options in the order shown; the first is A.
    record Choice(String stem, List<String> options, List<Figure> figures) implements Shown {
        public Choice {
            options = List.copyOf(options);
            figures = List.copyOf(figures);
        }
    }

    /// A number to be typed.
    ///
    /// @param unit the unit the answer is asked in, empty for a plain number
    /// @param signed whether a minus counts; it does not for what is positive by convention, such
    ///   as a sink rate
    @SuppressWarnings("JavaLangClash") // beside Choice it is the plain word
    record Number(String stem, String unit, boolean signed, List<Figure> figures) implements Shown {
        public Number {
            figures = List.copyOf(figures);
        }
    }
}
