package org.groundline.bank.numeric;

import org.groundline.bank.numeric.formula.Expression;

/// What a misconception computes instead of the answer.
record Mistake(String misconception, Expression formula) {}
