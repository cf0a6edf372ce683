package org.groundline.bank.file;

/// Something wrong in the bank.
///
/// @param level `error`, `warning` or `notice`
/// @param file path from the bank's folder, with `/`
/// @param line counted from 1
/// @param rule the rule's short name
/// @param message what is wrong and how to mend it
public record Finding(String level, String file, int line, String rule, String message) {
    public boolean isError() {
        return level.equals(Severity.ERROR.word());
    }

    /// The finding in one line, as editors and terminals can follow it.
    public String text() {
        return file + ":" + line + ": " + level + ": " + message + " (" + rule + ")";
    }
}
