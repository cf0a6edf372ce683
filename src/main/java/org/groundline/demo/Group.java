package org.groundline.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/// An intake of the simulation, with those who have joined it so far.
final class Group {
    private final Roster.Intake plan;
    private final UUID intake;
    private final List<Student> students = new ArrayList<>();

    Group(Roster.Intake plan, UUID intake) {
        this.plan = plan;
        this.intake = intake;
    }

    Roster.Intake plan() {
        return plan;
    }

    UUID intake() {
        return intake;
    }

    /// In the order of the roster.
    List<Student> students() {
        return List.copyOf(students);
    }

    void add(Student student) {
        students.add(student);
    }
}
