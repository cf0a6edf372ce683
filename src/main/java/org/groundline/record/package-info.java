/// The training record: what each student still lacks in each module, what was talked through and
/// shown, and who signed the theory off. Nothing is edited; a reversal is a counter-entry, and a
/// machine's result alone grants nothing. Start reading at `ModuleRecord`.
@NullMarked
package org.groundline.record;

import org.jspecify.annotations.NullMarked;
