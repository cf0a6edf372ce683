package org.groundline.diagram;

import java.util.Optional;

/// What a drawing may know. For a stem a value that is asked, or is not told, cannot be read: no
/// length, angle or position can give it away.
final class Facts {
    private final Kind kind;
    private final Situation situation;
    private final Values values;
    private final Purpose purpose;

    Facts(Kind kind, Situation situation, Values values, Purpose purpose) {
        this.kind = kind;
        this.situation = situation;
        this.values = values;
        this.purpose = purpose;
    }

    boolean isStem() {
        return purpose == Purpose.STEM;
    }

    /// Whether the value belongs to this drawing at all. One that is asked does, even where a stem
    /// was not given it.
    boolean has(Term term) {
        return values.has(term) || isAsked(term);
    }

    boolean isAsked(Term term) {
        return situation.asked().contains(term.id());
    }

    boolean isLabelled(Term term) {
        return situation.labelled().contains(term.id()) || isAsked(term);
    }

    /// Whether the value is drawn at all: in a stem only if it is told or asked.
    boolean isShown(Term term) {
        return has(term) && (!isStem() || isLabelled(term));
    }

    boolean isKnown(Term term) {
        return values.has(term)
                && (!isStem()
                        || kind.silent().contains(term)
                        || isLabelled(term) && !isAsked(term));
    }

    /// A value that is known.
    double si(Term term) {
        if (!isKnown(term)) {
            throw new IllegalStateException(term.id() + " is not known in this drawing");
        }
        return values.get(term);
    }

    /// The value as it is written: "600 m", "?" where it is asked, nothing where it is not
    /// labelled.
    Optional<String> written(Term term) {
        if (!has(term) || !isLabelled(term)) {
            return Optional.empty();
        }
        return Optional.of(isStem() && isAsked(term) ? "?" : printed(term));
    }

    /// The same without its sign, where a word such as "tailwind" already tells it.
    Optional<String> writtenSize(Term term) {
        return written(term).map(text -> text.replaceFirst("^[−-]", ""));
    }

    private String printed(Term term) {
        String printed = situation.printed().get(term.id());
        if (printed != null) {
            return printed;
        }
        boolean isInput = situation.values().containsKey(term.id());
        return isInput
                ? kind.printInput(term, values.get(term))
                : kind.printDerived(term, values.get(term));
    }
}
