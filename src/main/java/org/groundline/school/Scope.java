package org.groundline.school;

/// Whose records an action may touch; each includes the one before.
public enum Scope {
    NONE("-"),
    OWN("own"),
    SCHOOL("school");

    private final String word;

    Scope(String word) {
        this.word = word;
    }

    /// The word in the permissions file.
    String word() {
        return word;
    }

    /// Whether this includes another scope.
    boolean includes(Scope other) {
        return compareTo(other) >= 0;
    }
}
