package org.groundline.bank.numeric.working;

import org.groundline.bank.numeric.formula.Expression;
import org.groundline.bank.numeric.posed.Cause;

/// What a wrong idea computes instead of the answer.
///
/// @param step the position of the step that goes wrong, from 1; 0 where none is named
public record Mistake(Cause.Idea cause, Expression formula, int step) {}
