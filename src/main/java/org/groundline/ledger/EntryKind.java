package org.groundline.ledger;

/// What an entry of the ledger records.
public enum EntryKind {
    SIGN_OFF("sign-off"),
    REVERSAL("reversal"),
    OVERRIDE("override"),
    RESULT("result"),
    DEMONSTRATION("demonstration"),
    DEBRIEF("debrief"),
    RECOMMENDATION("recommendation"),
    AUTHORISATION("authorisation"),
    POLICY("policy"),
    ROLE("role"),
    QUESTION("question");

    private final String word;

    EntryKind(String word) {
        this.word = word;
    }

    /// The word in the entry's text and in the table.
    public String word() {
        return word;
    }
}
