/// An invented school for a first look. Its history is made by a simulation that acts through the
/// doors of the floors below, on a clock of its own, so that every row is made by the rules; the
/// same seed and the same present give the same history. Start reading at `DemoSchools`.
@NullMarked
package org.groundline.demo;

import org.jspecify.annotations.NullMarked;
