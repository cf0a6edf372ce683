/// What every page and every API route share: who is asking and whether they may, the frame around
/// a page, reading forms, and turning a refusal into an answer. Start reading at `Routes`.
@NullMarked
package org.groundline.web.request;

import org.jspecify.annotations.NullMarked;
