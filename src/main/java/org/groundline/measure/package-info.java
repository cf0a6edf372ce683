/// Quantities as people write them: dimensions, the units met here, rounding with a side, and the
/// one reader for numbers that somebody typed. Inside the program a bare `double` is SI; whatever
/// has another unit passes through here. Start reading at [Units][org.groundline.measure.Units] and
/// [TypedNumber][org.groundline.measure.TypedNumber].
@NullMarked
package org.groundline.measure;

import org.jspecify.annotations.NullMarked;
