package org.groundline.web.student;

import java.util.UUID;

/// One item of a test that is being sat.
///
/// @param of how many items the paper has
/// @param clientId made for this rendering, so that a double click is one answer
/// @param state of saving; stands in the style sheet for a sign, and the words say the same
public record SittingPage(
        SittingHead head,
        ItemWords itemWords,
        int position,
        int of,
        UUID itemId,
        UUID clientId,
        int seat,
        int sequence,
        boolean flagged,
        String state,
        String stateWords,
        AskedItem item) {
    /// Whether there is an item before this one.
    public boolean hasBefore() {
        return position > 1;
    }
}
