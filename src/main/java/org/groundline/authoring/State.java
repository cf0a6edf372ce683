package org.groundline.authoring;

/// Where an edition stands on its way.
public enum State {
    /// Being written; it may have errors.
    DRAFT("draft"),
    /// Waits for a second person.
    SUBMITTED("submitted"),
    /// A second person wants it changed: the next edition will be the answer.
    SENT_BACK("sent back"),
    /// Approved by a second person; its first day is still to come.
    REVIEWED("reviewed"),
    /// Approved by a second person and asked.
    LIVE("live"),
    /// Asked no more, whether replaced, ended or taken out.
    RETIRED("retired");

    private final String word;

    State(String word) {
        this.word = word;
    }

    /// The word on pages and in addresses.
    public String word() {
        return word;
    }
}
