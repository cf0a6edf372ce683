/// What must never change quietly: the append-only entries of a school, and who did what. An entry
/// names people only by salted commitments and holds no free text, so that it can stay when a
/// person is erased. Start reading at `Ledger`.
@NullMarked
package org.groundline.ledger;

import org.jspecify.annotations.NullMarked;
