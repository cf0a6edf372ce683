package org.groundline.web;

import java.util.List;
import java.util.function.Supplier;

/// Whether the server may hold tests that count now.
///
/// @param reasons why not, in words for the operator; empty where all is well
public record Readiness(Supplier<List<String>> reasons) {
    /// Whether there is no reason against it.
    public boolean holds() {
        return reasons.get().isEmpty();
    }
}
