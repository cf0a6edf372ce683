/// Flight theory as pure functions over SI doubles: no units, no state, only the JDK. A function
/// refuses what has no answer (a wind stronger than the airspeed, air that carries the glider up)
/// with an IllegalArgumentException naming value, unit and range; it never returns NaN. StrictMath
/// makes the results the same on every machine. Start reading at
/// [Glide][org.groundline.theory.Glide].
@NullMarked
package org.groundline.theory;

import org.jspecify.annotations.NullMarked;
