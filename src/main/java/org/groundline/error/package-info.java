/// Why a request cannot be carried out. Everything thrown for the sender's sake is a
/// [Refusal][org.groundline.error.Refusal], worded for people; anything else that is thrown is a
/// fault of the program. Start reading at `Refusal`.
@NullMarked
package org.groundline.error;

import org.jspecify.annotations.NullMarked;
