package org.groundline.database;

import java.util.UUID;

/// A person as the records know them: a random number that says nothing and outlives an erasure.
public record SubjectId(UUID value) {}
