/// The quantities of flight theory by name: what each takes and gives, in which units, where its
/// inputs make sense, and where it comes from. Formulas of the bank, the command line and the API
/// all read this one list, so that a function is described once. Start reading at
/// [Formulary][org.groundline.formulary.Formulary].
@NullMarked
package org.groundline.formulary;

import org.jspecify.annotations.NullMarked;
