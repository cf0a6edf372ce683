package org.groundline.bank.translation;

import java.util.ArrayList;
import java.util.List;

/// The texts of one original in another language.
///
/// @param follows the version of the English that it translates; empty while nobody has confirmed
///   one
/// @param seen the marks of the English texts that it translates; empty where unknown
/// @param texts in the order of the original's parts
/// @param line where it stands in its file
public record Translation(
        Original original, String follows, String seen, List<String> texts, int line) {
    public Translation {
        if (texts.size() != original.parts().size()) {
            throw new IllegalArgumentException(
                    "%d texts for %d parts".formatted(texts.size(), original.parts().size()));
        }
        texts = List.copyOf(texts);
    }

    /// A translation of the English as it is now.
    static Translation current(Original original, List<String> texts, int line) {
        String seen = original.parts().size() > 1 ? original.marks() : "";
        return new Translation(original, original.version(), seen, texts, line);
    }

    public State state() {
        return follows.equals(original.version()) ? State.CURRENT : State.STALE;
    }

    /// The text of a part.
    public String text(String part) {
        for (int i = 0; i < texts.size(); i++) {
            if (original.parts().get(i).name().equals(part)) {
                return texts.get(i);
            }
        }
        throw new IllegalArgumentException(original.name() + " has no " + part);
    }

    /// The texts of the options in the order of the original.
    public List<String> options() {
        List<String> options = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            if (original.parts().get(i).isOption()) {
                options.add(texts.get(i));
            }
        }
        return options;
    }

    /// What of the English is no longer as it was, as far as the marks tell.
    public String moved() {
        List<String> marks = List.of(seen.split("-"));
        List<Part> parts = original.parts();
        if (parts.size() == 1) {
            return "its " + parts.getFirst().name() + " moved";
        }
        if (seen.isEmpty()) {
            return "which of its texts moved is not known";
        }
        if (marks.size() != parts.size()) {
            return "the number of its options changed";
        }
        List<String> moved = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (!marks.get(i).equals(parts.get(i).mark())) {
                moved.add(parts.get(i).name());
            }
        }
        return moved.isEmpty()
                ? "none of its texts moved, but something behind them, such as a misconception or"
                        + " the source"
                : "what moved: " + String.join(", ", moved);
    }

    /// Whether it says the same of the same, wherever it stands.
    boolean saysTheSameAs(Translation other) {
        return original.equals(other.original)
                && follows.equals(other.follows)
                && seen.equals(other.seen)
                && texts.equals(other.texts);
    }
}
