/// Coming in and going out: set-up of an empty school, log-in, log-out, one's own password, and the
/// first page after the log-in. Start reading at `AccountPages`.
@NullMarked
package org.groundline.web.account;

import org.jspecify.annotations.NullMarked;
