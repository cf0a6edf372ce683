/// A school's own part of the question bank: its questions on their way from a draft to being
/// asked, what it withdraws, and whose air law it teaches.
@NullMarked
package org.groundline.authoring;

import org.jspecify.annotations.NullMarked;
