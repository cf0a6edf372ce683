/// Numeric templates: questions with drawn values and a computed answer. A template that is
/// dimensionally wrong, can draw a case without an answer or has mistakes too close to its key does
/// not come into being, so one that exists poses only sound questions. Start reading at
/// [NumericTemplate][org.groundline.bank.numeric.NumericTemplate], the door; the rooms behind it
/// are `source` (what an author writes), `draw`, `goal` and `picture` (its parts), `working` (a
/// case of it), `check` and `posed` (what a student gets).
@NullMarked
package org.groundline.bank.numeric;

import org.jspecify.annotations.NullMarked;
