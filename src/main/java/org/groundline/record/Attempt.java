package org.groundline.record;

import java.time.Instant;
import java.util.UUID;

/// A counted sitting that was handed in and marked.
///
/// @param passMark of the policy it was taken under, in hundredths of a percent
/// @param hundredths marks gained, in hundredths of a mark
/// @param possible marks to be had, in hundredths
public record Attempt(
        UUID sitting,
        Instant handedInAt,
        int passMark,
        int hundredths,
        int possible,
        boolean passed) {}
