/// The drawn values of a template: chosen by chance or computed from others, and all combinations
/// of them. A value is used as it is printed, so that a question can be worked out from what it
/// tells. Start reading at [DrawSpace][org.groundline.bank.numeric.draw.DrawSpace], then
/// [Draw][org.groundline.bank.numeric.draw.Draw].
@NullMarked
package org.groundline.bank.numeric.draw;

import org.jspecify.annotations.NullMarked;
