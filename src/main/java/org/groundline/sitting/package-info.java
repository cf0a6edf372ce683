/// Papers drawn from a blueprint, students sitting them, answers kept, marks made. What a student
/// may see and what only marking may see are two tables read by two repositories; an acknowledged
/// answer is never lost and the same request never counts twice. Start reading at `Sittings`.
@NullMarked
package org.groundline.sitting;

import org.jspecify.annotations.NullMarked;
