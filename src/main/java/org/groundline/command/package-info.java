/// The command line: the only place that knows arguments and exit codes. `Server` starts the parts
/// from the ground up and stops them in the other order, so that no answer on its way is cut off.
/// Start reading at `GroundlineCommand`.
@NullMarked
package org.groundline.command;

import org.jspecify.annotations.NullMarked;
