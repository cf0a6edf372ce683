package org.groundline.sitting;

/// What marking says of an item.
public enum Verdict {
    RIGHT("right"),
    WRONG("wrong"),
    UNANSWERED("unanswered");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /// The word on pages and in the tables.
    public String word() {
        return word;
    }
}
