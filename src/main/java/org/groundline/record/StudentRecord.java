package org.groundline.record;

import org.groundline.error.Refusal;
import org.groundline.school.Person;

import java.util.List;

/// A student's record in all modules of the course.
public record StudentRecord(Person student, List<ModuleRecord> modules) {
    public StudentRecord {
        modules = List.copyOf(modules);
    }

    /// @throws Refusal.NotFound if the course has no such module
    public ModuleRecord getModule(String id) {
        return modules.stream()
                .filter(m -> m.module().id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Refusal.NotFound("The course has no such module."));
    }
}
