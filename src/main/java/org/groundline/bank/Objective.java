package org.groundline.bank;

import java.util.Optional;

/// One thing a student must be able to do, and the stage before which they must.
///
/// @param national what a school's own questions must ask here because every country answers it
///   differently; empty where the answer holds everywhere
public record Objective(String id, String text, Stage stage, Optional<String> national) {}
