package org.groundline.bank;

import org.groundline.bank.Lists.Placed;
import org.groundline.bank.Lists.TopicPlace;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
import org.groundline.bank.file.Yaml;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// Reads `syllabus.yaml`.
final class SyllabusFile {
    static final String NAME = "syllabus.yaml";
    private static final List<String> DISCIPLINES = List.of("paraglider", "hang glider");

    private final Lists lists;
    private final Set<String> ids = new HashSet<>();

    private SyllabusFile(Lists lists) {
        this.lists = lists;
    }

    /// Reads the course and enters its topics and objectives into the lists.
    static Course read(Yaml root, Notes notes, Lists lists) {
        Section file = Section.of("the syllabus", root, notes);
        file.allowOnly("course");
        Section course =
                file.section("course", "put everything under 'course:'").named("the course");
        return new SyllabusFile(lists).course(course);
    }

    private Course course(Section course) {
        course.allowOnly("id", "title", "discipline", "modules");
        String id = Ids.words(course);
        String title = Prose.TITLE.read(course, "title", "name the course");
        String discipline = course.choice("discipline", DISCIPLINES.toArray(String[]::new), d -> d);
        List<Module> modules = new ArrayList<>();
        for (Section module : course.someSections("modules", "module")) {
            modules.add(module(module));
        }
        return new Course(id, title, discipline, modules);
    }

    private Module module(Section module) {
        module.allowOnly("id", "title", "topics", "demonstrations");
        String id = id(module, "", "[A-Z]{3}", "EQU");
        String title = Prose.TITLE.read(module, "title", "name the module");
        List<Topic> topics = new ArrayList<>();
        for (Section topic : module.someSections("topics", "topic")) {
            topics.add(topic(topic, id));
        }
        List<Demonstration> demonstrations = new ArrayList<>();
        for (Section shown : module.sections("demonstrations", "demonstration")) {
            demonstrations.add(demonstration(shown, id));
        }
        return new Module(id, title, topics, demonstrations);
    }

    private Topic topic(Section topic, String module) {
        topic.allowOnly("id", "title", "objectives");
        String id = Ids.numbered(topic, module, "-[1-9]\\d?", module + "-1");
        String title = Prose.TITLE.read(topic, "title", "name the topic");
        TopicPlace place = new TopicPlace(id, module);
        lists.topics().add(id, place, NAME, topic);
        List<Objective> objectives = new ArrayList<>();
        for (Section objective : topic.someSections("objectives", "objective")) {
            objectives.add(objective(objective, place));
        }
        return new Topic(id, title, objectives);
    }

    private Objective objective(Section section, TopicPlace place) {
        section.allowOnly("id", "stage", "text", "national");
        String id = Ids.numbered(section, place.topic(), "\\.[1-9]\\d?", place.topic() + ".1");
        Stage stage = section.choice("stage", Stage.values(), Stage::word);
        String text =
                Prose.OBJECTIVE.read(section, "text", "say in a sentence what is to be known");
        Objective objective = new Objective(id, text, stage, national(section));
        lists.objectives().add(id, new Placed(objective, place), NAME, section);
        return objective;
    }

    private static Optional<String> national(Section section) {
        return section.has("national")
                ? Optional.of(
                        Prose.SENTENCE.read(
                                section, "national", "say what each country answers for itself"))
                : Optional.empty();
    }

    private Demonstration demonstration(Section section, String module) {
        section.allowOnly("id", "title", "criteria", "never-overridable");
        String id = id(section, module, "-D[1-9]\\d?", module + "-D1");
        String title = Prose.TITLE.read(section, "title", "name what is shown");
        String criteria = Prose.SENTENCE.read(section, "criteria", "say when it counts as shown");
        return new Demonstration(id, title, criteria, section.flag("never-overridable"));
    }

    /// An id that is not entered into a list, so that its being unique is held here.
    private String id(Section section, String prefix, String suffix, String example) {
        String id = Ids.numbered(section, prefix, suffix, example);
        if (!id.isEmpty() && !ids.add(id)) {
            section.note(Rule.ID_TWICE, "id", "has the id " + id + " of another", "choose another");
        }
        return id;
    }
}
