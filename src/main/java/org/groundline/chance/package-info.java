/// Chance that can be repeated: the same seed gives the same draws on every machine and every JDK,
/// forever. The version names the algorithm; whoever keeps a seed keeps the version with it. Start
/// reading at [SeededDraw][org.groundline.chance.SeededDraw].
@NullMarked
package org.groundline.chance;

import org.jspecify.annotations.NullMarked;
