package org.groundline.bank;

/// What a question asks of the student: to know, to work it out, or to decide in a situation.
public enum Level {
    RECALL("recall"),
    APPLY("apply"),
    JUDGE("judge");

    private final String word;

    Level(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
