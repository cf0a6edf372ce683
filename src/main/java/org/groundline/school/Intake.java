package org.groundline.school;

import java.time.LocalDate;
import java.util.UUID;

/// Students who begin a course together.
public record Intake(UUID id, String name, LocalDate startsOn) {}
