package org.groundline.demo;

import org.groundline.database.SubjectId;

/// A student of the simulation: who they are in the school's records, and what they know.
///
/// @param chance everything that is drawn for this student
record Student(SubjectId subject, String email, Mind mind, Chance chance) {}
