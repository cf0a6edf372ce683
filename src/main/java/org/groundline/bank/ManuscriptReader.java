package org.groundline.bank;

import org.groundline.bank.file.BankFile;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
import org.groundline.bank.file.Yaml;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/// Reads a text that is written as a topic file with one question in it.
final class ManuscriptReader {
    private final Lists lists;

    ManuscriptReader(Lists lists) {
        this.lists = lists;
    }

    Manuscript read(String text) {
        Notes notes = new Notes(Manuscript.FILE);
        Optional<Yaml> root = BankFile.parse(text, notes);
        List<Draft> drafts = root.map(yaml -> read(yaml, notes)).orElse(List.of());
        String id = drafts.stream().map(d -> d.claim().id()).findFirst().orElse("");
        Optional<Question> question =
                drafts.size() == 1 && notes.errors() == 0
                        ? drafts.getFirst().settle(lists.questions())
                        : Optional.empty();
        return new Manuscript(id, question, notes.findings());
    }

    private List<Draft> read(Yaml root, Notes notes) {
        Section file = Section.of("the text", root, new Notes(Manuscript.FILE));
        String module =
                file.findText("topic")
                        .flatMap(topic -> lists.topics().find(topic))
                        .map(Lists.TopicPlace::module)
                        .orElse("");
        List<Draft> drafts = new TopicFile(lists, KnownSound.none()).read(root, notes, module);
        if (drafts.size() > 1) {
            int line = secondOf(file).line("id");
            String remedy = "keep one here and begin another text for the other";
            notes.add(Rule.VALUE, line, "the text holds more than one question", remedy);
        }
        return drafts;
    }

    private static Section secondOf(Section file) {
        return Stream.of("questions", "templates")
                .flatMap(list -> file.sections(list, "question").stream())
                .skip(1)
                .findFirst()
                .orElse(file);
    }
}
