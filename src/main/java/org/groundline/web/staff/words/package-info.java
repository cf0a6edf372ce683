/// What the pages for staff say: an interface for each page, and a class for each language. A
/// language that lacks a word does not compile. Start reading at
/// [SharedWords][org.groundline.web.staff.words.SharedWords].
@NullMarked
package org.groundline.web.staff.words;

import org.jspecify.annotations.NullMarked;
