package org.groundline.bank.translation;

/// How a translation stands to the English.
public enum State {
    /// It follows the English as it is now.
    CURRENT("current"),
    /// It follows an earlier version, or does not say which.
    STALE("stale"),
    /// There is none.
    MISSING("missing");

    private final String word;

    State(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
