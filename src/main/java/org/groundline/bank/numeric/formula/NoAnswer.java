package org.groundline.bank.numeric.formula;

import java.io.Serial;

/// A formula has no value for the values at hand: it divides by zero, or theory refuses.
public final class NoAnswer extends RuntimeException {
    @Serial private static final long serialVersionUID = 1L;
    private final String at;

    public NoAnswer(String at, String reason) {
        super(reason, null, false, false);
        this.at = at;
    }

    /// The formula's place in the template.
    public String at() {
        return at;
    }

    public String reason() {
        return String.valueOf(getMessage());
    }
}
