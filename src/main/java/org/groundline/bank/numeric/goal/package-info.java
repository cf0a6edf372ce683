/// What the value of a template's formula is for: a number that a student types, with what is
/// accepted and which slips are looked for, or a decision between options. All values here are in
/// the goal's unit. Start reading at [Goal][org.groundline.bank.numeric.goal.Goal].
@NullMarked
package org.groundline.bank.numeric.goal;

import org.jspecify.annotations.NullMarked;
