package org.groundline.bank.translation;

import org.groundline.bank.file.Section;

/// How a text of one sort must be written.
@FunctionalInterface
public interface Wording {
    /// The text under a key that must be there, after noting where it breaks a limit.
    String read(Section section, String key, String remedy);
}
