/// Pages for those who work on a school's question bank.
@NullMarked
package org.groundline.web.author;

import org.jspecify.annotations.NullMarked;
