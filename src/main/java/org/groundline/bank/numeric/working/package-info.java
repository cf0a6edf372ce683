/// A template's parts put together, and a case of it: computed for drawn values, then put into
/// words and intervals. No mistake's interval touches the accepted one. Start reading at
/// [Parts][org.groundline.bank.numeric.working.Parts], then
/// [Working][org.groundline.bank.numeric.working.Working].
@NullMarked
package org.groundline.bank.numeric.working;

import org.jspecify.annotations.NullMarked;
