/// Which briefs somebody has read, by their own word. An acknowledgement is of one version of a
/// brief; it is only ever added, and nothing else depends on it. Start reading at `Readings`.
@NullMarked
package org.groundline.reading;

import org.jspecify.annotations.NullMarked;
