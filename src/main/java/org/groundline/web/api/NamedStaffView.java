package org.groundline.web.api;

import java.util.Optional;
import java.util.UUID;

/// Who entered something; the name goes when the person is erased, the entry stays.
record NamedStaffView(UUID subject, Optional<String> name) {}
