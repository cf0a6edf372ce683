/// What a student gets of a template: drawn values, texts, the intervals by which a typed answer is
/// marked or the options to choose from, and what lies behind each wrong one. Nothing here refers
/// back to the template, so that an item can be kept as it was posed. Start reading at
/// [PosedTemplate][org.groundline.bank.numeric.posed.PosedTemplate].
@NullMarked
package org.groundline.bank.numeric.posed;

import org.jspecify.annotations.NullMarked;
