/// Pure test statistics over numbers: no database, no people, only the JDK. A figure always comes
/// with its uncertainty. Start reading at `Proportion`.
@NullMarked
package org.groundline.psychometrics;

import org.jspecify.annotations.NullMarked;
