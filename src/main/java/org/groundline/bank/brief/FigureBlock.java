package org.groundline.bank.brief;

import org.commonmark.node.CustomBlock;

/// A picture in a paragraph of its own; its children are the caption.
public final class FigureBlock extends CustomBlock {
    private final String destination;
    private final boolean titled;

    FigureBlock(String destination, boolean titled) {
        this.destination = destination;
        this.titled = titled;
    }

    /// Where the picture comes from, as written.
    public String destination() {
        return destination;
    }

    /// Whether it has a title beside its caption, which nobody would see.
    boolean isTitled() {
        return titled;
    }
}
