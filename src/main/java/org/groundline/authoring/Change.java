package org.groundline.authoring;

import org.groundline.error.Refusal;

import java.util.Arrays;

/// How far a text asks something else than the one it was begun from.
public enum Change {
    /// The same is asked in better words; what is known about the older version holds for this one.
    EDITORIAL("editorial"),
    /// Something else is asked, or something else is right.
    SUBSTANTIVE("substantive");

    private final String word;

    Change(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /// @throws Refusal.Invalid if no change is called so
    public static Change ofWord(String word) {
        return Arrays.stream(values())
                .filter(change -> change.word.equals(word))
                .findFirst()
                .orElseThrow(
                        () ->
                                new Refusal.Invalid(
                                        "change",
                                        "Say whether the change is editorial or substantive."));
    }
}
