package org.groundline.bank;

import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Section;
import org.groundline.bank.file.Yaml;

/// Reads `misconceptions.yaml`.
final class MisconceptionsFile {
    static final String NAME = "misconceptions.yaml";

    private MisconceptionsFile() {}

    static void read(Yaml root, Notes notes, Register<Misconception> list) {
        Section file = Section.of("the list of misconceptions", root, notes);
        file.allowOnly("misconceptions");
        for (Section section : file.someSections("misconceptions", "misconception")) {
            Misconception misconception = misconception(section);
            SlipIdeas.checkFeedback(section, misconception);
            list.add(misconception.id(), misconception, NAME, section);
        }
    }

    private static Misconception misconception(Section section) {
        section.allowOnly("id", "wrong", "right", "feedback");
        return new Misconception(
                Ids.words(section),
                Prose.SENTENCE.read(section, "wrong", "say the wrong idea in a sentence"),
                Prose.SENTENCE.read(section, "right", "say in a sentence what is right"),
                Prose.CLAUSE.read(
                        section, "feedback", "write a clause that reads after 'wrong: '"));
    }
}
