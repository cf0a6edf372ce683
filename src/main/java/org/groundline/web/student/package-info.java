/// The student's pages: the course, practice, tests and their results. No page carries a key, a
/// tolerance or a rationale before the answer in practice or the hand-in of a test, and every page
/// works without a script. Start reading at `StudentPages`.
@NullMarked
package org.groundline.web.student;

import org.jspecify.annotations.NullMarked;
