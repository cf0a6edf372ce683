package org.groundline.bank;

/// How far a student may go; an objective must be known before its stage. In the order of training.
public enum Stage {
    GROUND_HANDLING("ground handling"),
    FIRST_HOP("first hop"),
    FIRST_HIGH_FLIGHT("first high flight"),
    UNSUPERVISED_FLIGHT("unsupervised flight"),
    TOW("tow");

    private final String word;

    Stage(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
