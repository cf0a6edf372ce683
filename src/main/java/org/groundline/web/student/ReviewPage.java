package org.groundline.web.student;

import java.util.List;

/// All items of a test before it is handed in: which are answered, open and flagged.
///
/// @param lead how many are still open
/// @param open the numbers of the open ones
/// @param sure what the student confirms
/// @param message why it was not handed in just now; empty where nothing happened
public record ReviewPage(
        SittingHead head,
        String lead,
        List<Integer> open,
        List<NumberCell> numbers,
        String sure,
        String message) {
    public ReviewPage {
        open = List.copyOf(open);
        numbers = List.copyOf(numbers);
    }

    /// An item in the grid.
    public record NumberCell(int position, boolean answered, boolean flagged) {}

    /// Where the student goes back to: the first open item, or the first of all.
    public int backTo() {
        return open.isEmpty() ? 1 : open.get(0);
    }
}
