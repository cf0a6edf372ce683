/// The pages of briefs: one topic, all of a module for the wall, and the list. Students and staff
/// read the same pages. Start reading at `BriefPages`.
@NullMarked
package org.groundline.web.brief;

import org.jspecify.annotations.NullMarked;
