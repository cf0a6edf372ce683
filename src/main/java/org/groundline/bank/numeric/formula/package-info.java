/// The formulas of numeric templates: read once into one typed tree, which knows its dimension and
/// computes its value. A tree with a dimensional mistake cannot be built, so whatever was read is
/// right in that respect. Start reading at [Formula][org.groundline.bank.numeric.formula.Formula].
@NullMarked
package org.groundline.bank.numeric.formula;

import org.jspecify.annotations.NullMarked;
