package org.groundline.database;

import java.util.UUID;

/// The tenant: every row of a school is led by it.
public record SchoolId(UUID value) {}
