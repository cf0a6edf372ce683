package org.groundline.diagram;

import java.util.Map;

/// Values in SI.
record Values(Map<Term, Double> si) {
    Values {
        si = Map.copyOf(si);
    }

    boolean has(Term term) {
        return si.containsKey(term);
    }

    double get(Term term) {
        Double value = si.get(term);
        if (value == null) {
            throw new IllegalStateException("this drawing was given no " + term.id());
        }
        return value;
    }
}
