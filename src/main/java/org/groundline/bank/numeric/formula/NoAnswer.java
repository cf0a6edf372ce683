package org.groundline.bank.numeric;

import java.io.Serial;

/// A formula has no value for the values at hand: it divides by zero, or theory refuses.
final class NoAnswer extends RuntimeException {
    @Serial private static final long serialVersionUID = 1L;
    private final String at;

    NoAnswer(String at, String reason) {
        super(reason, null, false, false);
        this.at = at;
    }

    /// The formula's place in the template.
    String at() {
        return at;
    }

    String reason() {
        return String.valueOf(getMessage());
    }
}
