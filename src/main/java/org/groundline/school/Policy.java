package org.groundline.school;

import java.time.Instant;

/// The rules of a school from an instant on; never edited, only followed by the next version.
public record Policy(int version, Instant inForce, PolicyRules rules) {}
