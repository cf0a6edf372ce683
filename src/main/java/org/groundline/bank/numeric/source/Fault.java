package org.groundline.bank.numeric.source;

/// Why a template does not load.
///
/// @param at the place in the template, such as `answer.formula` or `mistakes[1].formula`
/// @param problem what is wrong there
/// @param remedy what the author can do about it
public record Fault(String at, String problem, String remedy) {}
