package org.groundline.bank.numeric.posed;

import org.groundline.diagram.Situation;

import java.util.Optional;

/// The drawing of a question as posed.
///
/// @param kind the name of its [diagram][org.groundline.diagram.Diagram]
/// @param stem what a student may know of it; empty where it only explains the answer
/// @param solution all of it
public record PosedPicture(String kind, Optional<Situation> stem, Situation solution) {}
