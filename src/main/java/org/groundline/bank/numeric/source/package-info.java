/// What an author writes and what is wrong with it: the texts of a numeric template, the readers of
/// decimals, names, units, wordings and formulas that all its parts share, and the faults that they
/// note. Reading goes on after a fault, so that an author sees all of them at once. Start reading
/// at [TemplateSource][org.groundline.bank.numeric.source.TemplateSource], then
/// [Faults][org.groundline.bank.numeric.source.Faults].
@NullMarked
package org.groundline.bank.numeric.source;

import org.jspecify.annotations.NullMarked;
