/// Sunrise, sunset and civil twilight anywhere on earth. The sun's position is a library's affair;
/// what this package holds is which event belongs to which local day. Start reading at
/// [Daylight][org.groundline.daylight.Daylight].
@NullMarked
package org.groundline.daylight;

import org.jspecify.annotations.NullMarked;
