/// The drawing of a template: where its values come from and what of it a question shows. Beside a
/// stem it tells drawn values only, never the answer or what leads to it. Start reading at
/// [Picture][org.groundline.bank.numeric.picture.Picture].
@NullMarked
package org.groundline.bank.numeric.picture;

import org.jspecify.annotations.NullMarked;
