package org.groundline.bank;

import java.util.List;
import java.util.Optional;

/// A syllabus: what a student of one discipline learns, in the order in which it is taught.
public record Course(String id, String title, String discipline, List<Module> modules) {
    public Course {
        modules = List.copyOf(modules);
    }

    public Optional<Module> findModule(String moduleId) {
        return modules.stream().filter(m -> m.id().equals(moduleId)).findFirst();
    }

    public Optional<Topic> findTopic(String topicId) {
        return modules.stream()
                .flatMap(m -> m.topics().stream())
                .filter(t -> t.id().equals(topicId))
                .findFirst();
    }

    public Optional<Demonstration> findDemonstration(String demonstrationId) {
        return modules.stream()
                .flatMap(m -> m.demonstrations().stream())
                .filter(d -> d.id().equals(demonstrationId))
                .findFirst();
    }
}
