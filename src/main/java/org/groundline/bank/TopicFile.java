package org.groundline.bank;

import org.groundline.bank.Lists.TopicPlace;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
import org.groundline.bank.file.Yaml;

import java.util.ArrayList;
import java.util.List;

/// Reads topic files: the questions that are sound; what is wrong with the others is noted. Several
/// files may be read at the same time.
final class TopicFile {
    private final Lists lists;
    private final FixedReader fixed;
    private final TemplateReader templates;

    TopicFile(Lists lists, KnownSound known) {
        this.lists = lists;
        this.fixed = new FixedReader(lists);
        this.templates = new TemplateReader(lists, known);
    }

    /// @param folder the name of the folder the file lies in
    List<Draft> read(Yaml root, Notes notes, String folder) {
        Section file = Section.of("the file", root, notes);
        file.allowOnly("topic", "questions", "templates");
        TopicPlace place = place(file, folder);
        List<Draft> drafts = new ArrayList<>();
        for (Section question : file.sections("questions", "question")) {
            drafts.add(fixed.read(question, place, notes.file()));
        }
        for (Section template : file.sections("templates", "template")) {
            drafts.add(templates.read(template, place, notes.file()));
        }
        if (!file.has("questions") && !file.has("templates")) {
            String remedy = "list questions or templates, or remove the file";
            file.note(Rule.MISSING, "topic", "has neither 'questions' nor 'templates'", remedy);
        }
        return drafts;
    }

    /// The topic's place; for an unknown topic one that makes no further findings.
    private TopicPlace place(Section file, String folder) {
        String topic = file.text("topic", "name the topic, such as EQU-1");
        TopicPlace place =
                lists.topics().refer(file, "topic", topic).orElse(new TopicPlace(topic, folder));
        if (!place.module().equals(folder)) {
            file.note(
                    Rule.FILE_PLACE,
                    "topic",
                    "is of topic " + topic + " and lies in the folder " + folder,
                    "move it to the folder " + place.module());
        }
        return place;
    }
}
