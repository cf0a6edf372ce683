package org.groundline.bank;

import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
import org.groundline.bank.file.Yaml;

/// Reads `sources.yaml`.
final class SourcesFile {
    static final String NAME = "sources.yaml";

    private SourcesFile() {}

    static void read(Yaml root, Notes notes, Register<Source> list) {
        Section file = Section.of("the list of sources", root, notes);
        file.allowOnly("sources");
        for (Section section : file.someSections("sources", "source")) {
            Source source = source(section);
            list.add(source.id(), source, NAME, section);
        }
    }

    private static Source source(Section section) {
        section.allowOnly("id", "title", "publisher", "year", "read");
        return new Source(
                Ids.words(section),
                Prose.SENTENCE.read(section, "title", "write the title and edition"),
                Prose.TITLE.read(section, "publisher", "name who published it"),
                year(section),
                section.choice("read", Source.Read.values(), Source.Read::word));
    }

    /// The year of the edition, or an empty text where it bears none.
    private static String year(Section section) {
        String year = section.findText("year").orElse("");
        if (!year.isEmpty() && !year.matches("(19|20)\\d\\d")) {
            String problem = "has the year '" + year + "'";
            section.note(Rule.VALUE, "year", problem, "write four digits such as 2024");
        }
        return year;
    }
}
