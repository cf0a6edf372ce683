package org.groundline.bank;

import java.util.List;

/// A syllabus: what a student of one discipline learns, in the order in which it is taught.
public record Course(String id, String title, String discipline, List<Module> modules) {
    public Course {
        modules = List.copyOf(modules);
    }
}
