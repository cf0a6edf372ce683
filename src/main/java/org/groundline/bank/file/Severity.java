package org.groundline.bank.file;

/// How much a finding matters: a bank with an error does not load.
public enum Severity {
    ERROR("error"),
    WARNING("warning"),
    NOTICE("notice");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
