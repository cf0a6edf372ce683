package org.groundline.sitting;

/// What hangs on a sitting; the rules of one never leak into another.
public enum Stakes {
    PRACTICE("practice"),
    PROGRESS("progress"),
    FINAL("final");

    private final String word;

    Stakes(String word) {
        this.word = word;
    }

    /// The word on pages and in the tables.
    public String word() {
        return word;
    }

    static Stakes ofWord(String word) {
        for (Stakes stakes : values()) {
            if (stakes.word.equals(word)) {
                return stakes;
            }
        }
        throw new IllegalArgumentException("no stakes are called " + word);
    }
}
