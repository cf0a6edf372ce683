package org.groundline.bank.numeric;

import org.groundline.bank.numeric.formula.FormulaFault;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/// Collects what is wrong, so that an author sees all of it at once.
final class Faults {
    private final List<Fault> found = new ArrayList<>();

    void add(String at, String problem, String remedy) {
        found.add(new Fault(at, problem, remedy));
    }

    /// Returns what a formula's reader gives, or notes its fault.
    <T> Optional<T> noting(String at, Supplier<T> reader) {
        try {
            return Optional.of(reader.get());
        } catch (FormulaFault fault) {
            add(at, fault.problem(), fault.remedy());
            return Optional.empty();
        }
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    List<Fault> list() {
        return List.copyOf(found);
    }
}
