package org.groundline.web.api;

import java.util.UUID;

/// Somebody by name.
record NamedView(UUID subject, String name) {}
