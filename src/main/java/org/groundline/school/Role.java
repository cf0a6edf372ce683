package org.groundline.school;

import java.util.Arrays;
import java.util.Optional;

/// What a person is in a school; a person may be several things at once.
public enum Role {
    STUDENT("student"),
    INSTRUCTOR("instructor"),
    INVIGILATOR("invigilator"),
    AUTHOR("author"),
    REVIEWER("reviewer"),
    CHIEF_INSTRUCTOR("chief instructor"),
    INSPECTOR("inspector"),
    OPERATOR("operator");

    private final String word;

    Role(String word) {
        this.word = word;
    }

    /// The word on pages, in the permissions file and in the table.
    public String word() {
        return word;
    }

    /// Returns the role of a word.
    public static Optional<Role> findByWord(String word) {
        return Arrays.stream(values()).filter(r -> r.word.equals(word)).findFirst();
    }
}
