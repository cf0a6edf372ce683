package org.groundline.bank.file;

import static org.groundline.bank.file.Severity.ERROR;
import static org.groundline.bank.file.Severity.WARNING;

/// The rules a bank is held against.
public enum Rule {
    FILE_MISSING("file-missing", ERROR),
    FILE_UNREADABLE("file-unreadable", ERROR),
    FILE_TOO_LARGE("file-too-large", ERROR),
    FILE_PLACE("file-place", ERROR),
    FILE_NOT_READ("file-not-read", WARNING),
    YAML_SYNTAX("yaml-syntax", ERROR),
    YAML_FEATURE("yaml-feature", ERROR),
    NESTING("nesting", ERROR),
    DUPLICATE_KEY("duplicate-key", ERROR),
    CHARACTER("character", ERROR),

    SHAPE("shape", ERROR),
    UNKNOWN_KEY("unknown-key", ERROR),
    MISSING("missing", ERROR),
    VALUE("value", ERROR),
    LENGTH("length", ERROR),
    MARKDOWN("markdown", ERROR),
    ID_FORM("id-form", ERROR),
    ID_TWICE("id-twice", ERROR),

    TOPIC_UNKNOWN("topic-unknown", ERROR),
    OBJECTIVE_UNKNOWN("objective-unknown", ERROR),
    OBJECTIVE_ELSEWHERE("objective-elsewhere", ERROR),
    OBJECTIVE_NOT_SERVED("objective-not-served", ERROR),
    OBJECTIVE_WITHOUT_QUESTION("objective-without-question", WARNING),
    TOPIC_WITHOUT_BRIEF("topic-without-brief", WARNING),
    MISCONCEPTION_UNKNOWN("misconception-unknown", ERROR),
    MISCONCEPTION_UNUSED("misconception-unused", WARNING),
    SLIP("slip", ERROR),
    ILLUSTRATION("illustration", ERROR),
    ILLUSTRATION_UNKNOWN("illustration-unknown", ERROR),
    ILLUSTRATION_UNUSED("illustration-unused", WARNING),
    DIAGRAM_UNKNOWN("diagram-unknown", ERROR),
    SOURCE_UNKNOWN("source-unknown", ERROR),
    SOURCE_UNUSED("source-unused", WARNING),

    OPTION_COUNT("option-count", ERROR),
    ONE_KEY("one-key", ERROR),
    KEY_MISCONCEPTION("key-misconception", ERROR),
    OPTIONS_EQUAL("options-equal", ERROR),
    OPTION_ALL_OR_NONE("option-all-or-none", ERROR),
    OPTION_COMBINATION("option-combination", ERROR),
    OPTION_LETTER("option-letter", ERROR),
    LONG_KEY("long-key", WARNING),
    NEGATIVE_STEM("negative-stem", WARNING),
    SHORT_STEM("short-stem", WARNING),
    BLANK_START("blank-start", WARNING),

    TEMPLATE("template", ERROR),

    LANGUAGE_UNKNOWN("language-unknown", ERROR),
    TRANSLATION_UNKNOWN("translation-unknown", ERROR),
    TRANSLATION_STALE("translation-stale", WARNING),
    TRANSLATION_LACKS_IDEA("translation-lacks-idea", WARNING),
    TRANSLATION_OUTDATED("translation-outdated", ERROR);

    private final String word;
    private final Severity severity;

    Rule(String word, Severity severity) {
        this.word = word;
        this.severity = severity;
    }

    public String word() {
        return word;
    }

    public Severity severity() {
        return severity;
    }
}
