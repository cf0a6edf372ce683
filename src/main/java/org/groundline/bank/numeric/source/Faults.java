package org.groundline.bank.numeric.source;

import org.groundline.bank.numeric.formula.FormulaFault;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/// Collects what is wrong, so that an author sees all of it at once.
public final class Faults {
    private final List<Fault> found = new ArrayList<>();

    /// Notes one more; its parts are those of a [Fault].
    public void add(String at, String problem, String remedy) {
        found.add(new Fault(at, problem, remedy));
    }

    /// Returns what a formula's reader gives, or notes its fault.
    public <T> Optional<T> noting(String at, Supplier<T> reader) {
        try {
            return Optional.of(reader.get());
        } catch (FormulaFault fault) {
            add(at, fault.problem(), fault.remedy());
            return Optional.empty();
        }
    }

    /// Whether nothing is wrong so far.
    public boolean isEmpty() {
        return found.isEmpty();
    }

    /// What is wrong so far, in the order in which it was found.
    public List<Fault> list() {
        return List.copyOf(found);
    }
}
