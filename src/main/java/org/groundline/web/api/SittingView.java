package org.groundline.web.api;

import org.groundline.sitting.Item;
import org.groundline.sitting.OpenSitting;
import org.groundline.sitting.Sitting;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// A sitting on the way: items without keys, and what was given so far.
///
/// @param now the server's clock, which decides
/// @param seat the seat of this log-in; every answer carries it
/// @param nextSequence what the next answer on this seat carries
record SittingView(
        UUID sitting,
        String module,
        String title,
        Instant startedAt,
        Optional<Instant> deadlineAt,
        Instant now,
        int seat,
        int nextSequence,
        List<SheetItem> items) {
    /// An item with what was given to it.
    ///
    /// @param given the answer that counts as things stand
    record SheetItem(ItemView item, Optional<GivenView> given, boolean flagged) {}

    static SittingView of(OpenSitting open, Instant now) {
        Sitting.Facts facts = open.sitting().facts();
        return new SittingView(
                facts.id(),
                facts.scope(),
                open.title(),
                facts.startedAt(),
                open.sitting().deadline(),
                now,
                open.seat(),
                open.nextSequence(),
                open.items().stream().map(item -> sheetItem(open, item)).toList());
    }

    private static SheetItem sheetItem(OpenSitting open, Item item) {
        return new SheetItem(
                ItemView.of(item),
                Optional.ofNullable(open.answers().get(item.id())).map(GivenView::of),
                open.flagged().contains(item.id()));
    }
}
