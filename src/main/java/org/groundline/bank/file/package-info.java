/// Reads one bank file strictly: a small tree of texts, each with its line, and nothing that YAML
/// can do beyond that. Whatever is wrong becomes a finding with file, line, rule and remedy, never
/// an exception for the caller. Start reading at [Section][org.groundline.bank.file.Section].
@NullMarked
package org.groundline.bank.file;

import org.jspecify.annotations.NullMarked;
