/// The question bank: files in, checked immutable questions out. Whatever has been loaded is sound,
/// since a bank with one error does not load, and a question's version is the hash of its content.
/// Start reading at [Questions][org.groundline.bank.Questions]; the form of the files is described
/// in the bank's own README.
@NullMarked
package org.groundline.bank;

import org.jspecify.annotations.NullMarked;
