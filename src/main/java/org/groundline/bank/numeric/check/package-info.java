/// What must hold of a template as a whole, when each of its parts is sound: an answer for all that
/// can be drawn, a stem that tells what is needed, mistakes and options that can be told apart,
/// worked examples that come out. A fault of the drawn values names the first case in which it
/// shows. Start reading at [SpaceCheck][org.groundline.bank.numeric.check.SpaceCheck].
@NullMarked
package org.groundline.bank.numeric.check;

import org.jspecify.annotations.NullMarked;
