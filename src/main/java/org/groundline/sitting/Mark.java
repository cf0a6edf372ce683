package org.groundline.sitting;

import org.groundline.bank.Belief;

import java.util.Optional;

/// The mark of one item, in hundredths of a mark.
///
/// @param belief the wrong idea that the answer points to, where one is known
public record Mark(Verdict verdict, int hundredths, int possible, Optional<Belief> belief) {}
