package org.groundline.bank;

import org.groundline.bank.file.Section;

/// The id that a question claims for itself. As files are read side by side, only the end shows
/// whether another question has it, too; that is then told where the id was read.
///
/// @param id empty where the question has none, which is noted already
record Claim(String id, String file, Section section) {
    static Claim read(Section section, String file) {
        return new Claim(Ids.words(section), file, section.later());
    }

    /// Enters the id, or notes that an earlier question has it.
    boolean enter(Register<String> questions) {
        return id.isEmpty() || questions.add(id, id, file, section);
    }
}
