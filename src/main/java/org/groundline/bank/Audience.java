package org.groundline.bank;

/// Whom a numeric question may meet: everyone (head arithmetic), those with a calculator, or those
/// who train as instructors.
public enum Audience {
    CORE("core"),
    EXTENDED("extended"),
    INSTRUCTOR("instructor");

    private final String word;

    Audience(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
