/// The bank's texts in other languages: files in, the state of each text out, and a bilingual sheet
/// for those who translate. A translation names the version of the English that it follows; when
/// the English moves on, it is stale and put to nobody. Start reading at
/// [Translation][org.groundline.bank.translation.Translation].
@NullMarked
package org.groundline.bank.translation;

import org.jspecify.annotations.NullMarked;
