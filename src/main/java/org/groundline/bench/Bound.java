package org.groundline.bench;

/// On which side of its mark a figure is good: there are speeds and there are times.
public enum Bound {
    AT_LEAST("at least"),
    AT_MOST("at most");

    private final String words;

    Bound(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
