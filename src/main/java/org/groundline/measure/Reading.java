package org.groundline.measure;

import java.math.BigDecimal;

/// What was made of a number that somebody typed.
public sealed interface Reading {
    /// It could be read.
    ///
    /// @param value in the expected unit
    /// @param unit the one it was typed in, or the expected one where none was typed
    /// @param echo the reading in words for the person, such as "5.3 km = 5300 m"
    record Read(BigDecimal value, Unit unit, String echo) implements Reading {}

    /// It could not; `why` is worded for the person.
    record Unreadable(String why) implements Reading {}
}
