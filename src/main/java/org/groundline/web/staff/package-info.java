/// What instructors and the school look at and do: the class board, a student's record with its
/// talks, demonstrations and sign-offs, tests to open, pass rates, people and policy. Start reading
/// at `StaffPages`.
@NullMarked
package org.groundline.web.staff;

import org.jspecify.annotations.NullMarked;
