/// Groundline, a ground-school theory server for free-flight schools. `Main` reads the settings and
/// builds the floors from the ground up; no other package knows them all. Start reading at `Main`.
@NullMarked
package org.groundline;

import org.jspecify.annotations.NullMarked;
