package org.groundline.web.api;

import org.groundline.school.Intake;

import java.time.LocalDate;
import java.util.UUID;

/// An intake.
record IntakeView(UUID intake, String name, LocalDate startsOn) {
    static IntakeView of(Intake intake) {
        return new IntakeView(intake.id(), intake.name(), intake.startsOn());
    }
}
