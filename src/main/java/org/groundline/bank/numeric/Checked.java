package org.groundline.bank.numeric;

import org.groundline.bank.numeric.source.Fault;

import java.util.List;

/// What the check of a template found: a sound template, or everything that is wrong with it.
public sealed interface Checked {
    record Sound(NumericTemplate template) implements Checked {}

    record Faulty(List<Fault> faults) implements Checked {
        public Faulty {
            faults = List.copyOf(faults);
            if (faults.isEmpty()) {
                throw new IllegalArgumentException("a faulty template without a fault");
            }
        }
    }
}
