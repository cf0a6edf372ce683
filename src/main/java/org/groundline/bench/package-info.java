/// What the program measures of itself, with JMH: each benchmark prints the mark it has to reach
/// beside what it reached. Speed is never asserted in a test, as a busy machine would fail it.
/// Start reading at [Benchmarks][org.groundline.bench.Benchmarks].
@NullMarked
package org.groundline.bench;

import org.jspecify.annotations.NullMarked;
