package org.groundline.bank;

import org.groundline.bank.Lists.TopicPlace;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
import org.groundline.bank.file.Yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Reads a topic file: the questions that are sound; what is wrong with the others is noted.
final class TopicFile {
    private final Lists lists;
    private final FixedReader fixed;
    private final TemplateReader templates;

    TopicFile(Lists lists) {
        this.lists = lists;
        this.fixed = new FixedReader(lists);
        this.templates = new TemplateReader(lists);
    }

    /// @param folder the name of the folder the file lies in
    List<Question> read(Yaml root, Notes notes, String folder) {
        Section file = Section.of("the file", root, notes);
        file.allowOnly("topic", "questions", "templates");
        TopicPlace place = place(file, folder);
        List<Question> questions = new ArrayList<>();
        for (Section question : file.sections("questions", "question")) {
            keep(fixed.read(question, place, notes.file()), questions);
        }
        for (Section template : file.sections("templates", "template")) {
            keep(templates.read(template, place, notes.file()), questions);
        }
        if (!file.has("questions") && !file.has("templates")) {
            String remedy = "list questions or templates, or remove the file";
            file.note(Rule.MISSING, "topic", "has neither 'questions' nor 'templates'", remedy);
        }
        return questions;
    }

    private static void keep(Optional<? extends Question> question, List<Question> questions) {
        question.ifPresent(questions::add);
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
