package org.groundline.reading;

import java.time.Instant;

/// Whether somebody has read a brief.
public sealed interface Reading {
    record Unread() implements Reading {}

    /// As it is now.
    ///
    /// @param at when they first said so
    record Current(Instant at) implements Reading {}

    /// In an earlier version only.
    ///
    /// @param at when they last said so
    record Changed(Instant at) implements Reading {}
}
