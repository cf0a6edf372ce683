package org.groundline.bank;

/// One thing a student must be able to do, and the stage before which they must.
public record Objective(String id, String text, Stage stage) {}
