package org.groundline.bank.numeric;

import org.groundline.bank.numeric.formula.Expression;

/// What a wrong idea computes instead of the answer.
record Mistake(Cause.Idea cause, Expression formula) {}
