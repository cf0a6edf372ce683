package org.groundline.web.author;

import org.groundline.web.request.Frame;

import java.util.List;

/// A list of questions.
///
/// @param searched the words looked for
/// @param found how many there are, in words
/// @param before the address of the page before; empty on the first
/// @param after the address of the next page; empty on the last
public record BankPage(
        Frame frame,
        BankWords words,
        String searched,
        List<Choice> choices,
        List<Row> rows,
        String found,
        String before,
        String after,
        boolean mayWrite) {
    public BankPage {
        choices = List.copyOf(choices);
        rows = List.copyOf(rows);
    }

    /// A way to narrow the list.
    public record Choice(String name, String chosen, List<String> values) {}

    /// A question.
    ///
    /// @param notAsked why students are not asked it; empty where they are
    public record Row(
            String address,
            String id,
            String start,
            String objective,
            String level,
            String kind,
            String state,
            String notAsked) {}
}
